package org.leat.expression;

/**
 * What is wrong with an expression.
 *
 * @param line in the expression, from 1
 * @param column from 1, in code points
 * @param text in a sentence without a full stop
 */
public record ExpressionProblem(int line, int column, String text) {}
