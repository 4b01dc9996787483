package camberwell.run;

import camberwell.vocabulary.Change;

/** A change that was made before a run, and how far it went. */
public record Made(Change change, Tried.Moved moved) {
}
