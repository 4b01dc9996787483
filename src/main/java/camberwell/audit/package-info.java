/** Holds what the rules and the knowledge notes claim against the handling model, on reference cars. */
package camberwell.audit;
