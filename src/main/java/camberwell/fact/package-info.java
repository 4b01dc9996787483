/**
 * What the rules reason about: what was put in ({@link camberwell.fact.Premise}) and what they conclude
 * ({@link camberwell.fact.Conclusion}). Facts never change; a conclusion carries the rule and the premises it stands on,
 * so that an explanation is read off it and never made up afterwards.
 */
package camberwell.fact;
