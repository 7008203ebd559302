/** The command line: thin, no logic of its own. The one place that prints to the terminal and may use everything. */
@NullMarked
package org.leat.cli;

import org.jspecify.annotations.NullMarked;
