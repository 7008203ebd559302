package org.leat.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * An output beside the one on standard output.
 *
 * @param format what it is written in
 * @param file where to
 */
record AlsoWritten(Format format, Path file) {

    /** Reads {@code FORMAT=FILE}. */
    static final class Converter implements ITypeConverter<AlsoWritten> {
        @Override
        public AlsoWritten convert(String word) {
            int equals = word.indexOf('=');
            if (equals < 0 || equals == word.length() - 1) {
                throw new TypeConversionException("'" + word + "' is not FORMAT=FILE");
            }
            try {
                return new AlsoWritten(
                        new OptionWords.OfFormat().convert(word.substring(0, equals)),
                        Path.of(word.substring(equals + 1)));
            } catch (InvalidPathException e) {
                throw new TypeConversionException("no file can be called " + word.substring(equals + 1));
            }
        }
    }
}
