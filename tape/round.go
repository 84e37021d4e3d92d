package tape

// Nearest is the multiple of step nearest to l, halves away from zero. Step is
// above 0.
func Nearest(l, step Length) Length {
	if l < 0 {
		return -Nearest(-l, step)
	}
	return (l + step/2) / step * step
}

// Up is the least multiple of step that is not below l. Step is above 0.
func Up(l, step Length) Length { return -Down(-l, step) }

// Down is the greatest multiple of step that is not above l. Step is above 0.
func Down(l, step Length) Length {
	m := l % step
	if m < 0 {
		m += step
	}
	return l - m
}
