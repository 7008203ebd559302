package org.leat.design;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a field's value can never pass, in the SI unit of its kind (temperatures in kelvins, ratios as plain numbers). A
 * list is limited item by item.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Limits {
    /** {@return the least value allowed} */
    double atLeast() default Double.NEGATIVE_INFINITY;

    /** {@return the value that must be exceeded} */
    double above() default Double.NEGATIVE_INFINITY;

    /** {@return the greatest value allowed} */
    double atMost() default Double.POSITIVE_INFINITY;

    /** {@return the least number of items of a list} */
    int items() default 0;
}
