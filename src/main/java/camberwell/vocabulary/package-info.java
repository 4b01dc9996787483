/** The trade's words as closed lists: what a case, a car, a note and a rule may say. Depends on nothing. */
package camberwell.vocabulary;
