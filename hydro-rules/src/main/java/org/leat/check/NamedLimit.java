package org.leat.check;

import org.leat.quantity.QuantityKind;

/**
 * A limit that a rule compares with and that settings may change.
 *
 * @param name of its own within the rule
 * @param kind what it measures
 * @param standard the value in SI that holds unless settings change it
 * @param unit trade unit in which people read it
 * @param source standard and clause, handbook and page, or "common practice"
 */
public record NamedLimit(String name, QuantityKind kind, double standard, String unit, String source) {}
