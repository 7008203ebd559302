/**
 * The rule API and the checker: a rule looks at a design and the plant solved from it and answers with outcomes; the
 * checker runs every rule, moves each assumption through its range, and gathers a report. Formats no text and knows no
 * output format. Uses the model; used by packs, reports and the command line.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.check;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
