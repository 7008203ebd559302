package org.leat.cli;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * An output beside the one on standard output.
 *
 * @param format what it is written in
 * @param file where to
 * @param folder whether that is a folder: it ends with a slash, or there is one
 */
record AdditionalReport(Format format, Path file, boolean folder) {

    /** Reads {@code FORMAT=FILE} or {@code FORMAT=FOLDER/}. */
    static final class Converter implements ITypeConverter<AdditionalReport> {
        @Override
        public AdditionalReport convert(String word) {
            int equals = word.indexOf('=');
            if (equals < 0 || equals == word.length() - 1) {
                throw new TypeConversionException("'" + word + "' is not FORMAT=FILE");
            }
            try {
                Path file = Path.of(word.substring(equals + 1));
                return new AdditionalReport(
                        new OptionWords.OfFormat().convert(word.substring(0, equals)),
                        file,
                        word.endsWith("/") || word.endsWith(File.separator) || Files.isDirectory(file));
            } catch (InvalidPathException e) {
                throw new TypeConversionException("no file can be called " + word.substring(equals + 1));
            }
        }
    }
}
