package org.leat.design;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Help for one field, one record or one choice, as the JSON Schema and messages show it. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.TYPE, ElementType.FIELD})
public @interface About {
    /** {@return one sentence without a full stop} */
    String value();
}
