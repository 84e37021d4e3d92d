package plane

import "strake/tape"

// Pt is a place in a plane, in ticks.
type Pt struct{ X, Y tape.Length }

// P is short for a point at x, y.
func P(x, y tape.Length) Pt { return Pt{x, y} }

// Add is p moved by q.
func (p Pt) Add(q Pt) Pt { return Pt{p.X + q.X, p.Y + q.Y} }

// Sub is the step from q to p.
func (p Pt) Sub(q Pt) Pt { return Pt{p.X - q.X, p.Y - q.Y} }

// Span is a stretch between two places on a line, ends counted. It is empty
// when To is not above From.
type Span struct{ From, To tape.Length }

// Len is the length of s, 0 when it is empty.
func (s Span) Len() tape.Length { return max(0, s.To-s.From) }

// Empty tells whether s has no length.
func (s Span) Empty() bool { return s.To <= s.From }

// Meet is what s and t have in common; empty when they only touch.
func (s Span) Meet(t Span) Span { return Span{max(s.From, t.From), min(s.To, t.To)} }

// Cut is s less t: none, one or two stretches in order.
func (s Span) Cut(t Span) []Span {
	m := s.Meet(t)
	if m.Empty() {
		if s.Empty() {
			return nil
		}
		return []Span{s}
	}
	var out []Span
	if m.From > s.From {
		out = append(out, Span{s.From, m.From})
	}
	if m.To < s.To {
		out = append(out, Span{m.To, s.To})
	}
	return out
}
