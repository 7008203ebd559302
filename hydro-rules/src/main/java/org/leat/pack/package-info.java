/**
 * The built-in rules, one file each, named component and what is judged. Uses the rule API, the model and its catalogue;
 * knows no output format.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.pack;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
