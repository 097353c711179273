package org.standwright.viewer.work;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.standwright.check.Finding;
import org.standwright.design.Design;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.file.edit.JsonEditException;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.FileProblem;
import org.standwright.make.Built;
import org.standwright.make.Product;
import org.standwright.sheet.plan.Effort;
import org.standwright.solid.Fineness;
import org.standwright.solid.SolidException;
import org.standwright.viewer.document.Reading;

/**
 * Works requests out in stages, away from the screen: first all that is seen, then cut list, findings, a first sheet plan, cures
 * and the final plan. A request that is not the newest any more is given up between two stages, and while it plans.
 */
final class Live {
    private final Threads threads;
    private final Answers answers;
    private final Consumer<Throwable> failed;
    private final AtomicLong newest = new AtomicLong();
    /** Of the fast thread alone: whose solids are taken over. */
    private Optional<Built> seen = Optional.empty();
    /** Of the slow thread alone: as fine as files need it. */
    private Optional<Built> fine = Optional.empty();

    Live(Threads threads, Answers answers, Consumer<Throwable> failed) {
        this.threads = threads;
        this.answers = answers;
        this.failed = failed;
    }

    void begin(Request request) {
        long number = newest.incrementAndGet();
        threads.fast().execute(() -> guarded(() -> see(request, number)));
    }

    /** Has a text written, and hands it over or the reason why there is none. */
    void write(Supplier<String> text, Consumer<String> written, Consumer<String> refused) {
        threads.fast()
                .execute(() -> guarded(() -> {
                    try {
                        var whole = text.get();
                        threads.screen().execute(() -> written.accept(whole));
                    } catch (JsonEditException | DesignFileException refusal) {
                        threads.screen().execute(() -> refused.accept(refusal.getMessage()));
                    }
                }));
    }

    private void see(Request request, long number) {
        if (isOld(number)) {
            return;
        }
        var reading = request.read();
        if (reading.file().isEmpty()) {
            tell(number, () -> answers.refused(reading.problems()));
            return;
        }
        var design = request.wanted(reading.file().orElseThrow().design());
        try {
            var built = seen.map(before -> before.edited(design)).orElseGet(() -> Built.of(design, Fineness.SCREEN));
            seen = Optional.of(built);
            tell(number, () -> answers.shown(built));
            threads.slow().execute(() -> guarded(() -> judge(design, reading, request.name(), number)));
        } catch (ImpossibleDesignException refusal) {
            tell(number, () -> answers.refused(List.of(reading.problem(refusal))));
        } catch (SolidException refusal) {
            tell(number, () -> answers.refused(List.of(FileProblem.whole(request.name(), refusal.getMessage(), ""))));
        }
    }

    private void judge(Design design, Reading reading, String name, long number) {
        if (isOld(number)) {
            return;
        }
        try {
            var built = fine.map(before -> before.edited(design)).orElseGet(() -> Built.of(design, Fineness.FILE));
            fine = Optional.of(built);
            finish(built, number);
        } catch (ImpossibleDesignException refusal) {
            tell(number, () -> answers.unplanned(reading.problem(refusal)));
        } catch (SolidException refusal) {
            tell(number, () -> answers.unplanned(FileProblem.whole(name, refusal.getMessage(), "")));
        } catch (CancellationException newer) {
            // somebody wants something else by now
        }
    }

    private void finish(Built built, long number) {
        var cutList = built.cutList();
        tell(number, () -> answers.listed(cutList));
        var found = built.found();
        tell(number, () -> answers.judged(found, false));
        var first = built.planned(cutList, Effort.QUICK, () -> isOld(number));
        tell(number, () -> answers.planned(new Job(built.furniture(), cutList, first), false));
        var findings = cured(built, found, number);
        tell(number, () -> answers.judged(findings, true));
        var plan = built.planned(cutList, Effort.USUAL, () -> isOld(number));
        tell(number, () -> answers.planned(new Job(built.furniture(), cutList, plan), true));
        var routed = built.routed(cutList, Effort.USUAL, () -> isOld(number));
        var product = new Product(built, cutList, plan, routed, findings, built.savings(cutList, plan));
        tell(number, () -> answers.finished(product));
    }

    private List<Finding> cured(Built built, List<Finding> found, long number) {
        if (isOld(number)) {
            throw new CancellationException("A newer design is there.");
        }
        return built.cured(found);
    }

    private boolean isOld(long number) {
        return number != newest.get();
    }

    private void tell(long number, Runnable answer) {
        threads.screen().execute(() -> {
            if (!isOld(number)) {
                answer.run();
            }
        });
    }

    /** A fault of the program shall reach somebody. */
    private void guarded(Runnable work) {
        try {
            work.run();
        } catch (RuntimeException | Error fault) {
            threads.screen().execute(() -> failed.accept(fault));
        }
    }
}
