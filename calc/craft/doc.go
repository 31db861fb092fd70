// Package craft holds the equations of making, heating and pulling with coiled-fibre muscles: a file for each step of the work, and for wire and
// heat one for each subject.
//
// Every function takes and returns quantities in SI and passes an unknown (NaN) through. Beside each function stands the
// Equation that the page shows for it; a test reads the shown text and proves that it is what the function computes.
package craft
