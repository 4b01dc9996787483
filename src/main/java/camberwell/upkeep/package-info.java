/** The rule base looked after: what is wrong with rules that can be read, what they cover, a case for each of them. */
package camberwell.upkeep;
