/**
 * Reading and writing design files: YAML or JSON in, a {@link org.leat.design.Design} with the position of every value
 * out, or every problem of the file in one pass; and back. The JSON Schema and the field reference are made from the
 * same records. Uses {@code design} and {@code quantity}, the YAML parser's events and, for JSON output, Jackson.
 */
@API(status = API.Status.STABLE, since = "0.1")
@NullMarked
package org.leat.file;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
