// Package order is what has to be bought so that the floor does not run short:
// cartons against risk, by laying the job's own runs many times over with boards
// drawn from the carton's spread of lengths and from lots whose share of culls
// nobody knows before they are opened.
//
// A floor of 383 sq ft in cartons of 20 sq ft is 19.15 cartons. Laid by a careful
// layer from lots with 5 % of culls, give or take 3, twenty cartons run short
// three times in five and twenty-two once in ten; the rule of ten per cent says
// twenty-two.
//
// Everything is a pure function of what is asked and a seed: lays are numbered,
// and each draws from a source of its own, so that any number of workers gives the
// same answer.
package order
