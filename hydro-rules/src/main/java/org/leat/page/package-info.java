/**
 * The page: one self-contained HTML file for each design, and an index of several. Pictures are SVG, drawn with a few chart
 * parts that live here; beside each stands a table of the same numbers. Uses the reports' wording and the solved plant; nothing
 * uses it but programs. The same reports give the same characters on every machine, in every locale and time zone.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.page;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
