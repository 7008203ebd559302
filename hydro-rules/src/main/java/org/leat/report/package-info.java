/**
 * Writers of reports, one for each format, and the wording of messages. Use the checker's types; the checker knows none
 * of them. Every writer gives the same characters for the same reports on every machine, locale and time zone.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.report;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
