// Package book writes sheets of figures and formulas as an .xlsx workbook (Office
// Open XML, ECMA-376), the same bytes for the same sheets.
package book
