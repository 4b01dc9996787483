/**
 * The rule base: the dictionary of sentences, the rule files, their compilation to Drools' executable model, and the
 * consultation that fires them. The only package that imports Drools.
 */
package camberwell.rules;
