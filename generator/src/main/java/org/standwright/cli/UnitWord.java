package org.standwright.cli;

import org.standwright.unit.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A unit as design files write it. */
final class UnitWord implements ITypeConverter<Units> {
    @Override
    public Units convert(String word) {
        return Units.named(word)
                .orElseThrow(() -> new TypeConversionException("'" + word + "' is none of mm, in, in/64."));
    }
}
