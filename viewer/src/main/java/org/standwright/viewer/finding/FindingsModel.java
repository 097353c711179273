package org.standwright.viewer.finding;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.design.built.Furniture;

/** Findings sorted and filtered by how much they weigh. */
public final class FindingsModel {
    private final ObservableValue<List<Finding>> findings;
    private final ObservableValue<Optional<Furniture>> furniture;
    private final Map<Severity, BooleanProperty> shown = new EnumMap<>(Severity.class);
    private final ObservableValue<List<Finding>> open;

    /** All but what is fine is shown at first. */
    public FindingsModel(ObservableValue<List<Finding>> findings, ObservableValue<Optional<Furniture>> furniture) {
        this.findings = findings;
        this.furniture = furniture;
        for (var severity : Severity.values()) {
            shown.put(severity, new SimpleBooleanProperty(this, severity.name(), severity != Severity.FINE));
        }
        open = Bindings.createObjectBinding(
                () -> sorted(shownSeverities()).stream()
                        .filter(finding -> finding.waived().isEmpty())
                        .toList(),
                findings,
                shown.get(Severity.STOP),
                shown.get(Severity.CAUTION),
                shown.get(Severity.NOTE),
                shown.get(Severity.FINE));
    }

    public ObservableValue<List<Finding>> findingsProperty() {
        return findings;
    }

    /** Whether findings that weigh so much are shown. */
    public BooleanProperty shownProperty(Severity severity) {
        return shown.get(severity);
    }

    private Set<Severity> shownSeverities() {
        return shown.entrySet().stream()
                .filter(entry -> entry.getValue().get())
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Severity.class)));
    }

    /** What nobody accepted and the filter lets through, the heaviest first. */
    public ObservableValue<List<Finding>> openProperty() {
        return open;
    }

    /** What is accepted as it is, the heaviest first; the filter does not hide it. */
    public List<Finding> accepted() {
        return sorted(EnumSet.allOf(Severity.class)).stream()
                .filter(finding -> finding.waived().isPresent())
                .toList();
    }

    /** Sorting keeps the order of the rules among findings of one weight. */
    private List<Finding> sorted(Set<Severity> severities) {
        return findings.getValue().stream()
                .filter(finding -> severities.contains(finding.severity()))
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** How many there are that weigh so much and that nobody accepted. */
    public long count(Severity severity) {
        return findings.getValue().stream()
                .filter(finding ->
                        finding.severity() == severity && finding.waived().isEmpty())
                .count();
    }

    /** The part that a finding is about, where its subject is a part's label. */
    public Optional<String> part(Finding finding) {
        return Optional.of(finding.subject())
                .filter(subject -> furniture.getValue().stream()
                        .flatMap(built -> built.assembly().parts().stream())
                        .map(PlacedPart::label)
                        .anyMatch(subject::equals));
    }
}
