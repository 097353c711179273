package org.standwright.viewer.app;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import org.standwright.file.FileKind;
import org.standwright.file.edit.JsonEdit;
import org.standwright.make.Built;
import org.standwright.viewer.work.Stage;
import org.standwright.viewer.work.Threads;

/**
 * How fast the window follows, measured in the running application on a real screen: from an edit of the largest preset
 * stand to the changed scene graph, then to the frame that shows it; from the start of Java to the first picture; what
 * each answer costs on the screen's thread; and the heap after 500 edits. The window has the 3D view and the form open.
 */
final class LiveBench {
    /** The preset with the most boards. */
    private static final String LARGEST = "mitre-saw-stand";

    private static final int WARM_UP = 60;
    private static final int AT_REST = 60;
    /** Between two of those, ms. */
    private static final int PAUSE = 150;

    private static final int EDITS = 500;
    private static final int MOST_SECONDS = 60;

    private final List<Double> answers = Collections.synchronizedList(new ArrayList<>());
    private final List<Double> seen = new ArrayList<>();
    private final List<Double> editing = new ArrayList<>();
    private final List<Double> working = new ArrayList<>();
    private final List<Double> waiting = new ArrayList<>();
    private final List<Double> updating = new ArrayList<>();
    private final List<Double> framed = new ArrayList<>();
    /** When the newest answer was handed to the screen's thread, and when that took it up. */
    private volatile long handed;

    private long taken;
    private Window window;

    public static void main(String[] arguments) throws Exception {
        new LiveBench().run();
        System.exit(0);
    }

    private void run() throws Exception {
        EarlyStart.begin(Demo.preset(FileKind.STAND, LARGEST).text());
        var started = new CompletableFuture<Void>();
        Platform.startup(() -> started.complete(null));
        started.join();
        Platform.setImplicitExit(false);
        double first = open();
        untilDone();
        for (int i = 0; i < WARM_UP; i++) {
            edit(i);
        }
        untilDone();
        forget();
        for (int i = 0; i < AT_REST; i++) {
            untilDone();
            Thread.sleep(PAUSE);
            edit(i);
        }
        title(AT_REST + " edits, each when the window had come to rest");
        rows();
        forget();
        untilDone();
        long before = heap();
        for (int i = 0; i < EDITS; i++) {
            edit(AT_REST + i);
        }
        untilDone();
        long after = heap();
        title(EDITS + " edits, each as soon as the one before was on the screen");
        rows();
        System.out.printf(Locale.ROOT, "%-58s %8.2f%n", "start of Java to the first picture, s (aim: 3)", first);
        System.out.printf(
                Locale.ROOT, "%-58s %8d%n%-58s %8d%n", "heap before, MB", before, "heap after, MB (aim: 400)", after);
    }

    private void forget() {
        List.of(answers, seen, editing, working, waiting, updating, framed).forEach(List::clear);
    }

    private void title(String what) throws Exception {
        int parts =
                get(() -> built().orElseThrow().furniture().assembly().parts().size());
        System.out.printf(Locale.ROOT, "%n%s, %d parts: %s%n%n", LARGEST, parts, what);
    }

    private void rows() {
        row("edit to changed scene graph, ms (aim: p50 16, p95 50)", seen);
        row("  the edit itself, with form and text", editing);
        row("  reading and building, beside it", working);
        row("  until the screen's thread is free of painting", waiting);
        row("  the scene graph", updating);
        row("from there to the end of the frame's layout, ms", framed);
        row("an answer on the screen's thread, ms (aim: most 16)", answers);
    }

    private static void row(String what, List<Double> times) {
        var sorted = new ArrayList<>(times);
        Collections.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%-58s p50 %6.1f  p95 %6.1f  most %6.1f%n",
                what,
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 95 / 100),
                sorted.get(sorted.size() - 1));
    }

    /** @return seconds from the start of Java to the end of the first frame with boards in it */
    private double open() throws Exception {
        var state = Files.createTempDirectory("standwright-bench");
        var first = new CompletableFuture<Long>();
        var usual = Threads.ofApplication();
        var threads = new Threads(timed(usual.screen()), usual.fast(), usual.slow());
        Platform.runLater(() -> {
            window = new Window(new Setup(
                    Demo.preset(FileKind.STAND, LARGEST),
                    Optional.empty(),
                    state,
                    threads,
                    Runnable::run,
                    SystemDialogs::new));
            window.show(code -> {});
            window.scene().addPostLayoutPulseListener(() -> {
                if (built().isPresent()) {
                    first.complete(System.currentTimeMillis());
                }
            });
        });
        long shown = first.get(MOST_SECONDS, TimeUnit.SECONDS);
        return (shown - ManagementFactory.getRuntimeMXBean().getStartTime()) / 1000.0;
    }

    private Executor timed(Executor screen) {
        return work -> {
            handed = System.nanoTime();
            long given = handed;
            screen.execute(() -> {
                taken = System.nanoTime();
                handed = given;
                work.run();
                answers.add(since(taken));
            });
        };
    }

    /** One edit as the form makes it: working height, a bay's width and a drawer's gap in turn. */
    private void edit(int number) throws Exception {
        var scene = new CompletableFuture<Double>();
        var frame = new CompletableFuture<Double>();
        Platform.runLater(() -> {
            long begin = System.nanoTime();
            var desk = window.desk();
            var watch = new Object() {
                javafx.util.Subscription end = javafx.util.Subscription.EMPTY;
                long changed;
            };
            watch.end = desk.builtProperty().subscribe((was, now) -> {
                watch.end.unsubscribe();
                watch.changed = System.nanoTime();
                working.add((handed - begin) / 1e6);
                waiting.add((taken - handed) / 1e6);
                updating.add((watch.changed - taken) / 1e6);
                scene.complete((watch.changed - begin) / 1e6);
                afterNextFrame(() -> frame.complete(since(watch.changed)));
            });
            desk.edit("Change " + number, changed(desk.documentProperty().get().text(), number));
            editing.add(since(begin));
        });
        seen.add(scene.get(MOST_SECONDS, TimeUnit.SECONDS));
        framed.add(frame.get(MOST_SECONDS, TimeUnit.SECONDS));
    }

    private void afterNextFrame(Runnable work) {
        window.scene().addPostLayoutPulseListener(new Runnable() {
            @Override
            public void run() {
                window.scene().removePostLayoutPulseListener(this);
                work.run();
            }
        });
        Platform.requestNextPulse();
    }

    private static String changed(String text, int number) {
        return switch (number % 3) {
            case 0 -> JsonEdit.set(text, "/workingHeight", "\"" + (950 + number / 3 % 20) + " mm\"");
            case 1 -> JsonEdit.set(text, "/name", "\"Mitre saw stand " + number + "\"");
            default -> JsonEdit.set(text, "/drawers/gap", "\"" + (2.5 + number / 3 % 4 * 0.5) + " mm\"");
        };
    }

    private Optional<Built> built() {
        return window.desk().builtProperty().get();
    }

    private void untilDone() throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_SECONDS);
        while (get(() -> window.desk().stageProperty().get()) != Stage.DONE) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException("not done: "
                        + get(() -> window.desk().problemsProperty().get()));
            }
            Thread.sleep(20);
        }
    }

    private static long heap() throws Exception {
        for (int i = 0; i < 3; i++) {
            System.gc();
            Thread.sleep(200);
        }
        var runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    }

    private static double since(long begin) {
        return (System.nanoTime() - begin) / 1e6;
    }

    private static <T> T get(Callable<T> work) {
        var outcome = new CompletableFuture<T>();
        Platform.runLater(() -> {
            try {
                outcome.complete(work.call());
            } catch (Exception failure) {
                outcome.completeExceptionally(failure);
            }
        });
        return outcome.join();
    }
}
