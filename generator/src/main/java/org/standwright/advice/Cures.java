package org.standwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.LoadedStand;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.Severity;
import org.standwright.check.rules.Checks;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.solid.AssemblySolids;

/**
 * Tries what rules propose against a stop or a caution: builds the changed stand, weighs it and checks it again. A cure is
 * the first proposal after which the rule has no more to say against the same subject (or, where that is gone, against
 * anything), and after which nothing new stops the stand, nor anything more than before. Against a stop two proposals are
 * tried together where none does alone; where no two do, the first that leaves a caution is better than nothing. What is
 * accepted as it is needs none.
 */
public final class Cures {
    /** Changed stands that are built for one stand, the worst findings' first. */
    static final int MOST_BUILDS = 20;
    /** Of the proposals against one finding so many are tried together, the cheapest. */
    private static final int PAIRED = 4;
    /** Sums of doubles differ by less. */
    private static final double SAME = 1 + 1e-9;

    private final LoadedStand before;
    private final AssemblySolids solids;
    private final List<Finding> findings;
    private final List<Rule> rules;
    /** The changed stands; nothing for one that cannot be built. */
    private final Map<StandDesign, Optional<LoadedStand>> built = new HashMap<>();
    /** Whether something new stops them. */
    private final Map<StandDesign, Boolean> stopped = new HashMap<>();

    private Cures(LoadedStand before, AssemblySolids solids, List<Finding> findings, List<Rule> rules) {
        this.before = before;
        this.solids = solids;
        this.findings = findings;
        this.rules = rules;
    }

    /**
     * The findings in their order, those with a cure that have one.
     *
     * @param solids of this very stand
     * @param findings what all rules find in it
     */
    public static List<Finding> of(LoadedStand stand, AssemblySolids solids, List<Finding> findings) {
        return of(stand, solids, findings, Checks.RULES);
    }

    static List<Finding> of(LoadedStand stand, AssemblySolids solids, List<Finding> findings, List<Rule> rules) {
        return new Cures(stand, solids, findings, rules).all();
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
        var better = new ArrayList<Cure>();
        for (var remedy : tries(finding)) {
            var cure = remedy.change()
                    .apply(before.design())
                    .flatMap(this::built)
                    .flatMap(after -> cure(finding, remedy, after));
            if (cure.isPresent() && cure.get().left().isEmpty()) {
                return cure;
            }
            cure.ifPresent(better::add);
        }
        return better.stream().findFirst();
    }

    private static List<Remedy> tries(Finding finding) {
        var alone = finding.remedies();
        var tries = new ArrayList<>(alone);
        if (finding.severity() == Severity.STOP) {
            int most = Math.min(PAIRED, alone.size());
            for (int first = 0; first < most; first++) {
                for (int second = first + 1; second < most; second++) {
                    tries.add(alone.get(first).and(alone.get(second)));
                }
            }
        }
        return tries;
    }

    /** A changed stand, or nothing where it cannot be built or too many were built already. */
    private Optional<LoadedStand> built(StandDesign design) {
        if (!built.containsKey(design) && built.size() < MOST_BUILDS) {
            built.put(design, build(design));
        }
        return built.getOrDefault(design, Optional.empty());
    }

    private Optional<LoadedStand> build(StandDesign design) {
        try {
            var stand = StandBuilder.build(design);
            return Optional.of(LoadedStand.of(stand, solids.rebuilt(stand.assembly())));
        } catch (ImpossibleDesignException refusal) {
            return Optional.empty();
        }
    }

    private Optional<Cure> cure(Finding finding, Remedy remedy, LoadedStand after) {
        var ofRule = rules.stream()
                .filter(rule -> rule.text().name().equals(finding.rule()))
                .flatMap(rule -> Checks.of(rule, after).stream())
                .toList();
        var same = ofRule.stream()
                .filter(other -> other.subject().equals(finding.subject()))
                .toList();
        var about = same.isEmpty() ? ofRule : same;
        var left = about.stream().filter(Cures::isTrouble).min(worstFirst());
        boolean helps = left.isEmpty()
                || finding.severity() == Severity.STOP && left.get().severity() == Severity.CAUTION;
        return helps && !isStopped(after)
                ? Optional.of(new Cure(remedy.words(), worst(about), left.map(Finding::message)))
                : Optional.empty();
    }

    private static Optional<Gauge> worst(List<Finding> findings) {
        return findings.stream().flatMap(finding -> finding.gauge().stream()).max(Comparator.comparing(Gauge::used));
    }

    /** Whether something stops a changed stand that did not stop the one before, or less. */
    private boolean isStopped(LoadedStand after) {
        return stopped.computeIfAbsent(after.design(), design -> {
            var known = stops(findings.stream());
            return stops(rules.stream().flatMap(rule -> Checks.of(rule, after).stream())).entrySet().stream()
                    .anyMatch(stop -> stop.getValue() > SAME * known.getOrDefault(stop.getKey(), 0.0));
        });
    }

    /** What stops a stand, with the share of its limit that is used. */
    private static Map<String, Double> stops(Stream<Finding> findings) {
        return findings.filter(Finding::isStop)
                .collect(Collectors.toMap(
                        finding -> finding.rule() + " " + finding.subject(),
                        finding -> finding.gauge().map(Gauge::used).orElse(1.0),
                        Math::max,
                        TreeMap::new));
    }
}
