/** Quantities with their units, as people write and read them. Depends on nothing. */
package camberwell.units;
