/** The trade's words, each described once as data: what a case, a car, a note and a rule may say. */
package camberwell.vocabulary;
