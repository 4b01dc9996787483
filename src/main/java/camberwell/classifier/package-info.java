/**
 * A text classifier by logistic regression: which of a number of labels hold of a set of features, and how likely. It knows
 * nothing of cars.
 */
package camberwell.classifier;
