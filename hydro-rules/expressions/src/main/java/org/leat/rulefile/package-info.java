/**
 * Rules written in a YAML file, with conditions as expressions. Needs {@code hydro-rules-expressions}, which an embedder
 * adds itself. Uses the rule API; used by the command line.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.rulefile;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
