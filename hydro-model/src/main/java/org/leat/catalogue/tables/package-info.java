/**
 * Published tables that fill in what the builder named: pipe series and their walls, properties of materials, fittings,
 * hoses, conductors and their capacity, battery cells. Each table is a CSV file whose header lines name its source; it is
 * read when it is first asked for, once, and never changes. Numbers leave in SI. May use {@code law} and {@code design}.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.catalogue.tables;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
