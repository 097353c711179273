package org.standwright.design.wall.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.wall.Things.Use;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.MadeHolder;

/** Random walls against a {@link Judge} that tries everything out. */
class RandomArrangementTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));

    static LongStream seeds() {
        return LongStream.rangeClosed(1, FULL ? 1000 : 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyHolderHangsWellOrSaysWhyNot(long seed) {
        var scene = RandomScene.of(seed);
        var walls = scene.walls();
        var judge = new Judge(walls);
        var arrangement = scene.arranged();

        assertThat(judge.complaints(arrangement.hung())).isEmpty();
        assertThat(arrangement.hung()).allMatch(judge::isBackedAsTold);
        var found = new ArrayList<String>();
        arrangement.hung().forEach(hung -> found.add(hung.name()));
        arrangement.unplaced().forEach(left -> found.add(left.holder().name()));
        assertThat(found)
                .containsExactlyInAnyOrderElementsOf(scene.made().stream()
                        .map(holder -> holder.holder().name())
                        .toList());
        if (!judge.hasDoors()) {
            for (var left : arrangement.unplaced()) {
                if (left.holder().things().use() != Use.UNUSED) {
                    assertThat(places(scene, left.holder().name(), arrangement.hung(), judge))
                            .as(left.holder().name())
                            .isEmpty();
                }
            }
        }
    }

    /** Tried every 40 mm on all rows. */
    private static List<HungHolder> places(Scene scene, String name, List<HungHolder> hung, Judge judge) {
        var places = new ArrayList<HungHolder>();
        var made = scene.made().stream()
                .filter(holder -> holder.holder().name().equals(name))
                .findFirst()
                .orElseThrow();
        for (var wall : scene.walls()) {
            for (var row : wall.rows()) {
                for (double x = 0.5; x < wall.outline().bounds().x1(); x += 40) {
                    var there = new HungHolder(made, wall.number(), row.number(), row.height(), x, null, false);
                    if (judge.complaints(there, hung).isEmpty()) {
                        places.add(there);
                    }
                }
            }
        }
        return places;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsFoundMayBeChosenByHand(long seed) {
        var scene = RandomScene.of(seed);
        var found = scene.arranged();
        var again = scene.hungByHand(found.hung()).arranged();

        assertThat(again.hung()).allMatch(HungHolder::byHand).hasSameSizeAs(found.hung());
        assertThat(again.hung().stream().map(HungHolder::x).toList())
                .isEqualTo(found.hung().stream().map(HungHolder::x).toList());
    }

    @Test
    void theJudgeNoticesHoldersThatAreMoved() {
        int moved = 0;
        int noticed = 0;
        for (long seed = 1; seed <= 60; seed++) {
            var scene = RandomScene.of(seed);
            var judge = new Judge(scene.walls());
            var hung = scene.arranged().hung();
            for (int i = 0; i < hung.size(); i++) {
                var others = new ArrayList<>(hung);
                var holder = others.remove(i);
                for (var other : others) {
                    if (other.wall() == holder.wall() && other.row() == holder.row()) {
                        // onto the neighbour, all but 10 mm of the room for fingers beside it
                        double x = other.area().x1()
                                + 10
                                - holder.made().box().min().x();
                        moved++;
                        noticed += judge.complaints(at(holder, holder.wall(), x), others)
                                        .isEmpty()
                                ? 0
                                : 1;
                    }
                }
                assertThat(judge.complaints(at(holder, holder.wall(), -500), others))
                        .isNotEmpty();
            }
        }
        assertThat(moved).isGreaterThan(100);
        assertThat(noticed).isEqualTo(moved);
    }

    @Test
    void theJudgeNoticesBacksThatAreToldWrong() {
        int noticed = 0;
        int all = 0;
        var kinds = EnumSet.noneOf(Backing.By.class);
        for (long seed = 1; seed <= 60; seed++) {
            var scene = RandomScene.of(seed);
            var judge = new Judge(scene.walls());
            for (var holder : scene.arranged().hung()) {
                kinds.add(holder.backing().by());
                all++;
                var further =
                        new Backing(holder.backing().by(), holder.backing().below() + 1);
                noticed += judge.isBackedAsTold(told(holder, further)) ? 0 : 1;
            }
        }
        assertThat(kinds).hasSize(3);
        // some lie on edge
        assertThat(noticed).isGreaterThan(all * 95 / 100);
    }

    private static HungHolder told(HungHolder holder, Backing other) {
        return new HungHolder(holder.made(), holder.wall(), holder.row(), holder.rowHeight(), holder.x(), other, false);
    }

    private static HungHolder at(HungHolder holder, int wall, double x) {
        MadeHolder made = holder.made();
        return new HungHolder(made, wall, holder.row(), holder.rowHeight(), x, holder.backing(), false);
    }
}
