package org.standwright.cli;

import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import org.standwright.check.RuleText;
import org.standwright.check.rules.Checks;
import org.standwright.file.text.NearestName;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A rule by its name. */
final class RuleWord implements ITypeConverter<RuleText>, Iterable<String> {
    @Override
    public RuleText convert(String word) {
        return Checks.named(word)
                .orElseThrow(() -> new TypeConversionException(
                        "'" + word + "' is no rule. These are: " + String.join(", ", nearestFirst(word)) + "."));
    }

    /** In the order of the rules, but the one that was probably meant before all others. */
    private static List<String> nearestFirst(String word) {
        var nearest = NearestName.to(word, names()).orElse("");
        return names().stream()
                .sorted(Comparator.comparing((String name) -> !name.equals(nearest)))
                .toList();
    }

    private static List<String> names() {
        return Checks.texts().stream().map(RuleText::name).toList();
    }

    @Override
    public Iterator<String> iterator() {
        return names().iterator();
    }
}
