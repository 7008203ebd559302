/**
 * The built-in rules, one file each, named component and what is judged. Uses the rule API, the model and its catalogue;
 * knows no output format.
 */
@NullMarked
package org.leat.pack;

import org.jspecify.annotations.NullMarked;
