package org.leat.design;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/**
 * What one field, one record or one choice is: the one statement of it, shown by the JSON Schema, messages, the field
 * reference, and, since it is passed on to accessors, constructors and the setters of builders, by Javadoc.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD, ElementType.PARAMETER, ElementType.TYPE, ElementType.FIELD})
public @interface About {
    /** {@return one sentence without a full stop} */
    String value();
}
