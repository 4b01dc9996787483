/** What the pyrometer and the gauge show: figures per tyre and axle, and the facts that the rules reason from. */
package camberwell.reading;
