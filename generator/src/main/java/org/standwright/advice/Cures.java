package org.standwright.advice;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.LoadedStand;
import org.standwright.check.Remedy;
import org.standwright.check.Severity;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.solid.AssemblySolids;

/**
 * Tries what rules propose against a stop or a caution: builds the changed stand, weighs it and checks it again. A cure is
 * the first proposal after which the rule has no more to say against the same subject (or, where that is gone, against
 * anything) and after which nothing new stops the stand. What is accepted as it is needs none.
 */
public final class Cures {
    /** Changed stands that are built for one stand, the worst findings' first. */
    static final int MOST_BUILDS = 12;

    private final LoadedStand before;
    private final AssemblySolids solids;
    private final List<Finding> findings;
    private final Function<LoadedStand, List<Finding>> checks;
    /** What is found in each changed stand; nothing for one that cannot be built. */
    private final Map<StandDesign, Optional<List<Finding>>> tried = new HashMap<>();

    private Cures(
            LoadedStand before,
            AssemblySolids solids,
            List<Finding> findings,
            Function<LoadedStand, List<Finding>> checks) {
        this.before = before;
        this.solids = solids;
        this.findings = findings;
        this.checks = checks;
    }

    /**
     * The findings in their order, those with a cure that have one.
     *
     * @param solids of this very stand
     * @param checks all rules
     */
    public static List<Finding> of(
            LoadedStand stand, AssemblySolids solids, Function<LoadedStand, List<Finding>> checks) {
        return new Cures(stand, solids, checks.apply(stand), checks).all();
    }

    private List<Finding> all() {
        var cures = new HashMap<Integer, Cure>();
        IntStream.range(0, findings.size())
                .boxed()
                .filter(place -> wantsCure(findings.get(place)))
                .sorted(Comparator.comparing(findings::get, worstFirst()))
                .forEach(place -> cure(findings.get(place)).ifPresent(cure -> cures.put(place, cure)));
        return IntStream.range(0, findings.size())
                .mapToObj(place ->
                        cures.containsKey(place) ? findings.get(place).cured(cures.get(place)) : findings.get(place))
                .toList();
    }

    private static boolean wantsCure(Finding finding) {
        return isTrouble(finding) && finding.waived().isEmpty();
    }

    private static boolean isTrouble(Finding finding) {
        return finding.severity().compareTo(Severity.CAUTION) <= 0;
    }

    private static Comparator<Finding> worstFirst() {
        return Comparator.comparing(Finding::severity)
                .thenComparing(finding -> finding.gauge().map(Gauge::used).orElse(0.0), Comparator.reverseOrder());
    }

    private Optional<Cure> cure(Finding finding) {
        for (var remedy : finding.remedies()) {
            var cure = remedy.change()
                    .apply(before.design())
                    .flatMap(this::found)
                    .flatMap(after -> cure(finding, remedy, after));
            if (cure.isPresent()) {
                return cure;
            }
        }
        return Optional.empty();
    }

    /** What is found in a changed stand, or nothing where it cannot be built or too many were built already. */
    private Optional<List<Finding>> found(StandDesign design) {
        if (!tried.containsKey(design) && tried.size() < MOST_BUILDS) {
            tried.put(design, built(design));
        }
        return tried.getOrDefault(design, Optional.empty());
    }

    private Optional<List<Finding>> built(StandDesign design) {
        try {
            var stand = StandBuilder.build(design);
            return Optional.of(checks.apply(LoadedStand.of(stand, solids.rebuilt(stand.assembly()))));
        } catch (ImpossibleDesignException refusal) {
            return Optional.empty();
        }
    }

    private Optional<Cure> cure(Finding finding, Remedy remedy, List<Finding> after) {
        var ofRule = after.stream()
                .filter(other -> other.rule().equals(finding.rule()))
                .toList();
        var same = ofRule.stream()
                .filter(other -> other.subject().equals(finding.subject()))
                .toList();
        var about = same.isEmpty() ? ofRule : same;
        return about.stream().noneMatch(Cures::isTrouble) && stops(findings).containsAll(stops(after))
                ? Optional.of(new Cure(remedy.words(), worst(about)))
                : Optional.empty();
    }

    private static Optional<Gauge> worst(List<Finding> findings) {
        return findings.stream().flatMap(finding -> finding.gauge().stream()).max(Comparator.comparing(Gauge::used));
    }

    private static TreeSet<String> stops(List<Finding> findings) {
        return findings.stream()
                .filter(Finding::isStop)
                .map(finding -> finding.rule() + " " + finding.subject())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
