package org.standwright.drawing.plot;

import java.util.List;
import org.standwright.geom.Loop;
import org.standwright.geom.Require;
import org.standwright.geom.Vec2;

/** One thing in a layer. */
public sealed interface Mark {
    <R> R accept(MarkVisitor<R> visitor);

    /** A closed line. */
    record Closed(Loop loop) implements Mark {
        @Override
        public <R> R accept(MarkVisitor<R> visitor) {
            return visitor.closed(this);
        }
    }

    /** A line of straight pieces from its first point to its last. */
    record Open(List<Vec2> points) implements Mark {
        public Open {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException("a line has " + points.size() + " points; it takes two or more.");
            }
        }

        @Override
        public <R> R accept(MarkVisitor<R> visitor) {
            return visitor.open(this);
        }
    }

    /** A whole circle: a round hole. */
    record Circle(Vec2 centre, double diameter) implements Mark {
        public Circle {
            Require.positive("diameter", diameter, "a circle");
        }

        @Override
        public <R> R accept(MarkVisitor<R> visitor) {
            return visitor.circle(this);
        }
    }

    /** The middle of something that is not drawn. */
    record Spot(Vec2 at) implements Mark {
        @Override
        public <R> R accept(MarkVisitor<R> visitor) {
            return visitor.spot(this);
        }
    }

    /**
     * One line of lettering, level.
     *
     * @param at where its baseline begins
     * @param size height of the letters' body, mm
     */
    record Words(String words, Vec2 at, double size) implements Mark {
        public Words {
            Require.named("words in a plot", words);
            Require.positive("size of letters", size, words);
        }

        @Override
        public <R> R accept(MarkVisitor<R> visitor) {
            return visitor.words(this);
        }
    }
}
