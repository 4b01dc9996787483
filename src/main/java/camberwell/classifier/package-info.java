/**
 * Text classifiers: which of a number of labels hold of a set of features, and how likely, by logistic regression and by a
 * network with one hidden layer. They know nothing of cars.
 */
package camberwell.classifier;
