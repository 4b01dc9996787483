package camberwell.language;

/** What a sentence of a rule means: it asks something of a fact, or it says what follows. */
public sealed interface Meaning permits Question, Statement {
}
