/** Advice as text and as JSON, both from the same records. */
package camberwell.report;
