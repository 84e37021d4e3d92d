// Package fasten says with what boards are nailed down, how many fasteners a
// floor takes, board by board, how deep they go and what they could hit.
//
// A board of 5 in face, 3/4 in thick and 45 in long takes a 2 in cleat every 8 in
// at most, 2 in from each end: seven. In the first row they go through the face
// along the wall as well as through the tongue by hand; in the last through the
// face alone. A 2 in cleat at 45 degrees that enters 0.54 in above the subfloor
// ends 7/8 in below its top, which is through a 3/4 in panel.
package fasten
