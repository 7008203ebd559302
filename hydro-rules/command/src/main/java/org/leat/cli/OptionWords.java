package org.leat.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.leat.check.Level;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Words of options, as they are typed. */
final class OptionWords {

    private OptionWords() {}

    private static <E extends Enum<E>> E of(String word, Class<E> type) {
        for (E constant : type.getEnumConstants()) {
            if (word(constant).equals(word)) {
                return constant;
            }
        }
        throw new TypeConversionException("'" + word + "' is none of "
                + Arrays.stream(type.getEnumConstants()).map(OptionWords::word).collect(Collectors.joining(", ")));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(java.util.Locale.ROOT);
    }

    /** Formats. */
    static final class OfFormat implements ITypeConverter<Format> {
        @Override
        public Format convert(String word) {
            return of(word, Format.class);
        }
    }

    /** Levels. */
    static final class OfLevel implements ITypeConverter<Level> {
        @Override
        public Level convert(String word) {
            return of(word, Level.class);
        }
    }

    /** Colours. */
    static final class OfColour implements ITypeConverter<Colour> {
        @Override
        public Colour convert(String word) {
            return of(word, Colour.class);
        }
    }

    /** Days. */
    static final class OfDay implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String word) {
            try {
                return LocalDate.parse(word);
            } catch (DateTimeParseException e) {
                throw new TypeConversionException("'" + word + "' is no day as 2031-05-30");
            }
        }
    }
}
