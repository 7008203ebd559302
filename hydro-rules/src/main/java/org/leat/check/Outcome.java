package org.leat.check;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * What a rule answers for one element in one case. Made at a {@link Spot}; a rule never makes one by hand.
 *
 * <p>Every answer keeps the level that a failure here would have, so that an open question can be told from a harmless
 * one.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public sealed interface Outcome {

    /** {@return rule, element by name and case; what makes this the same finding tomorrow, never text or line} */
    Identity identity();

    /** {@return how much it matters if it fails; kept for every kind} */
    Level level();

    /** {@return what there is to say} */
    Message message();

    /** {@return what came of it} */
    Kind kind();

    /** {@return value, limit and margin; null where nothing is compared} */
    default @Nullable Comparison comparison() {
        return null;
    }

    /** {@return path of the field that would let the rule judge; null unless it is open for want of one} */
    default @Nullable String missing() {
        return null;
    }

    /** {@return the rule's id} */
    default String rule() {
        return identity().rule();
    }

    /** {@return the element by name, as in {@code /penstock/sections[run]/pipe/sdr}; {@code /} for the whole design} */
    default String path() {
        return identity().path();
    }

    /** {@return the case that was judged, as the plant names it; "" where the rule does not depend on one} */
    default String during() {
        return identity().during();
    }

    /** It holds. */
    record Pass(Identity identity, Level level, @Nullable Comparison comparison, Message message) implements Outcome {
        public Pass {
            if (comparison != null && !comparison.holds()) {
                throw new IllegalArgumentException(identity.rule() + " passes although its comparison does not hold");
            }
        }

        @Override
        public Kind kind() {
            return Kind.PASS;
        }
    }

    /** It does not hold. */
    record Fail(Identity identity, Level level, @Nullable Comparison comparison, Message message) implements Outcome {
        public Fail {
            if (comparison != null && comparison.holds()) {
                throw new IllegalArgumentException(identity.rule() + " fails although its comparison holds");
            }
        }

        @Override
        public Kind kind() {
            return Kind.FAIL;
        }

        /** {@return whether this is said with a text of that name} */
        public boolean says(String text) {
            return message.id().equals(text);
        }

        /**
         * {@return the value compared, SI}
         *
         * @throws IllegalStateException where nothing is compared
         */
        public double value() {
            return compared().value();
        }

        /**
         * {@return the limit that the value is beyond, SI}
         *
         * @throws IllegalStateException where nothing is compared
         */
        public double limit() {
            return compared().nearestLimit();
        }

        /** {@return the comparison that does not hold} Throws {@link IllegalStateException} where nothing is compared. */
        public Comparison compared() {
            if (comparison == null) {
                throw new IllegalStateException(identity.rule() + " compares nothing here");
            }
            return comparison;
        }
    }

    /** Nobody can say, for want of an input or of a law that reaches so far. */
    record Open(
            Identity identity,
            Level level,
            @Nullable Comparison comparison,
            Message message,
            @Nullable String missing) implements Outcome {
        @Override
        public Kind kind() {
            return Kind.OPEN;
        }
    }

    /** A person must look. */
    record Review(Identity identity, Level level, Message message) implements Outcome {
        @Override
        public Kind kind() {
            return Kind.REVIEW;
        }
    }

    /** The design has nothing here to judge. */
    record NotApplicable(Identity identity, Level level, Message message) implements Outcome {
        @Override
        public Kind kind() {
            return Kind.NOT_APPLICABLE;
        }
    }

    /** Something told, nothing judged. */
    record Told(Identity identity, Level level, Message message) implements Outcome {
        @Override
        public Kind kind() {
            return Kind.INFORMATIONAL;
        }
    }
}
