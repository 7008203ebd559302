package org.leat.design;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/**
 * How a record or a choice may stand in a file, in one line with what is needed to begin: shown by messages where something
 * else stands there, and by the JSON Schema as its example. Its numbers are no advice.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Sample {
    /** {@return a mapping in one line, readable as what it is written at} */
    String value();
}
