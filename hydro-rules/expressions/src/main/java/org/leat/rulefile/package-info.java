/**
 * Rules written in a YAML file, with conditions as expressions. Needs {@code hydro-rules-expressions}, which an embedder
 * adds itself. Uses the rule API; used by the command line.
 */
@NullMarked
package org.leat.rulefile;

import org.jspecify.annotations.NullMarked;
