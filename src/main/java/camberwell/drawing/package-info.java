/** Drawings in SVG: the elements they are made of, and the scales that place figures in them. */
package camberwell.drawing;
