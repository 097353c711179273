package org.standwright.viewer.finding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javafx.animation.AnimationTimer;
import javafx.scene.layout.VBox;
import org.standwright.check.Finding;

/**
 * Cards below each other. Those that say what they said before stay; others are built a few a frame, so that no frame is
 * late, those at the top first.
 */
final class Slices extends VBox {
    /** Cards of one frame: making and styling one takes about 8 ms. */
    private static final int A_FRAME = 1;

    private final Map<CardText, FindingCard> built = new HashMap<>();
    private List<CardText> wanted = List.of();
    private Function<CardText, FindingCard> card = text -> {
        throw new IllegalStateException("there is nothing to show yet.");
    };
    private final AnimationTimer frames = new AnimationTimer() {
        @Override
        public void handle(long now) {
            build();
        }
    };

    Slices() {
        getStyleClass().add("cards");
    }

    /** @param made a new card */
    void show(List<CardText> texts, Function<CardText, FindingCard> made) {
        wanted = texts.stream().distinct().toList();
        card = made;
        built.keySet().retainAll(wanted);
        texts.forEach(text -> renew(text.finding(), text));
        arrange();
        build();
        frames.start();
    }

    private void renew(Finding finding, CardText text) {
        if (built.containsKey(text)) {
            built.get(text).renew(finding);
        }
    }

    private void build() {
        var next = wanted.stream()
                .filter(text -> !built.containsKey(text))
                .limit(A_FRAME)
                .toList();
        next.forEach(text -> built.put(text, card.apply(text)));
        if (next.isEmpty()) {
            frames.stop();
        } else {
            arrange();
        }
    }

    /** What is built, in the order that is wanted. */
    private void arrange() {
        var now = wanted.stream().filter(built::containsKey).map(built::get).toList();
        if (!now.equals(getChildren())) {
            getChildren().setAll(now);
        }
    }
}
