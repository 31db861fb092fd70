// Package craft holds the equations of making, heating and pulling with coiled-fibre muscles: a file for each step of the work, and for wire and
// heat one for each subject.
//
// Every function takes and returns quantities in SI and passes an unknown (NaN) through. Beside each function stands the
// Equation that the page shows for it; a test reads the shown text and proves that it is what the function computes.
//
// In the tests, and in a few comments, the rows of the collection of worked examples that these equations were checked against go by its names; the
// collection itself is no part of this repository. "Model M9" is a formula and one case of it, which its author worked through apart from the
// code, after the source that the Equation names; "handbook W04", a letter and two digits, an outside figure; "scenario S5" the whole task of a
// workshop, worked by hand. Beside each figure from outside stands the publication or the library it is from, or "from memory".
package craft
