package org.standwright.cli;

import org.standwright.sheet.plan.Effort;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Seconds to spend on each material's sheet plan. */
final class PlanSeconds implements ITypeConverter<Effort> {
    @Override
    public Effort convert(String word) {
        try {
            return Effort.seconds(Double.parseDouble(word));
        } catch (IllegalArgumentException refusal) {
            throw new TypeConversionException("'" + word + "' is not a number of seconds from 0.1 to 3600.");
        }
    }
}
