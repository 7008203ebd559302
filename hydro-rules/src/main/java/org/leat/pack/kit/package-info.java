/**
 * What rules of several components share: the worst of several cases, other sizes and ratings to try, how things are
 * named. Uses the rule API and the plant; knows no rule.
 */
@NullMarked
package org.leat.pack.kit;

import org.jspecify.annotations.NullMarked;
