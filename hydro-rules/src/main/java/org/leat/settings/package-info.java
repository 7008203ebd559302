/**
 * Settings files: reading them with the files they build on, and their JSON Schema. Every value keeps the file and line
 * it came from. Uses the model's reader and the checker's types.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.settings;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
