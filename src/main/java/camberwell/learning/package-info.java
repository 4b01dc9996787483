/** What came of earlier changes, weighed as one more witness beside the rules. */
package camberwell.learning;
