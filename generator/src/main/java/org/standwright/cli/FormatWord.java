package org.standwright.cli;

import java.util.Arrays;
import java.util.Iterator;
import java.util.stream.Collectors;
import org.standwright.make.Format;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A format by its word. */
final class FormatWord implements ITypeConverter<Format>, Iterable<String> {
    @Override
    public Format convert(String word) {
        return Arrays.stream(Format.values())
                .filter(format -> format.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("'" + word + "' is none of " + words() + "."));
    }

    @Override
    public Iterator<String> iterator() {
        return Arrays.stream(Format.values()).map(Format::word).iterator();
    }

    private static String words() {
        return Arrays.stream(Format.values()).map(Format::word).collect(Collectors.joining(", "));
    }
}
