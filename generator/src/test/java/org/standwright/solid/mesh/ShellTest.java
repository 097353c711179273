package org.standwright.solid.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ShellTest {
    private final Sketch sketch = new Sketch();

    @Test
    void buildsABoxOfItsSixFaces() {
        sketch.box(0, 0, 0, 300, 200, 20);

        var mesh = sketch.closed();

        assertThat(mesh.vertexCount()).isEqualTo(8);
        assertThat(mesh.triangleCount()).isEqualTo(12);
        assertThat(Sketch.openEdges(mesh)).isZero();
        assertThat(Sketch.volume(mesh)).isEqualTo(300.0 * 200 * 20);
    }

    @Test
    void putsTheTopOfABoxTogetherFromPieces() {
        sketch.walls(0, 20, 0, 0, 100, 0, 300, 0, 300, 200, 100, 200, 0, 200);
        sketch.level(0, -1, 0, 0, 0, 200, 100, 200, 300, 200, 300, 0, 100, 0);
        sketch.level(20, 1, 0, 0, 100, 0, 100, 200, 0, 200);
        sketch.level(20, 1, 100, 0, 300, 0, 300, 200, 100, 200);

        var mesh = sketch.closed();

        assertThat(mesh.vertexCount()).as("corners that are none are dropped").isEqualTo(8);
        assertThat(mesh.triangleCount()).isEqualTo(12);
        assertThat(Sketch.volume(mesh)).isEqualTo(300.0 * 200 * 20);
    }

    @Test
    void takesAHoleAsTwoRimsAndFinishedTriangles() {
        sketch.box(0, 0, 0, 300, 200, 20);
        drill(0, 20, 100, 100, 140, 100, 150, 150, 120, 170, 90, 140);

        var mesh = sketch.closed();

        double area = areaOf(100, 100, 140, 100, 150, 150, 120, 170, 90, 140);
        assertThat(mesh.vertexCount()).isEqualTo(8 + 2 * 5);
        assertThat(mesh.vertexCount() - mesh.triangleCount() / 2)
                .as("vertices less edges plus faces of one hole")
                .isZero();
        assertThat(Sketch.openEdges(mesh)).isZero();
        assertThat(Sketch.volume(mesh)).isEqualTo((300.0 * 200 - area) * 20);
    }

    /** A hole through both faces, given without edges. */
    private void drill(int low, int high, int... ring) {
        int n = ring.length / 2;
        var up = new int[n];
        var down = new int[n];
        for (int i = 0; i < n; i++) {
            up[n - 1 - i] = sketch.point(ring[2 * i], ring[2 * i + 1], high);
            down[i] = sketch.point(ring[2 * i], ring[2 * i + 1], low);
        }
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            sketch.shell().triangle(down[next], down[i], up[n - 1 - i]);
            sketch.shell().triangle(down[next], up[n - 1 - i], up[n - 1 - next]);
        }
        sketch.shell().loop(sketch.level(high, 1), up);
        sketch.shell().loop(sketch.level(low, -1), down);
    }

    private static double areaOf(int... ring) {
        double twice = 0;
        for (int i = 0; i < ring.length; i += 2) {
            int next = (i + 2) % ring.length;
            twice += (double) ring[i] * ring[next + 1] - (double) ring[next] * ring[i + 1];
        }
        return twice / 2;
    }

    @Test
    void partsTwoBoxesThatShareAnEdge() {
        sketch.box(0, 0, 0, 100, 100, 20);
        sketch.box(100, 100, 0, 200, 200, 20);

        var mesh = sketch.closed();

        assertThat(mesh.vertexCount())
                .as("eight of each box and one half-way along the edge")
                .isEqualTo(2 * 9);
        assertThat(Sketch.openEdges(mesh)).isZero();
        assertThat(Sketch.volume(mesh)).isEqualTo(2 * 100.0 * 100 * 20);
    }

    @Test
    void partsTwoBoxesThatShareACorner() {
        sketch.box(0, 0, 0, 100, 100, 20);
        sketch.box(100, 100, 20, 200, 200, 40);

        var mesh = sketch.closed();

        assertThat(mesh.vertexCount()).isEqualTo(2 * 8);
        assertThat(Sketch.openEdges(mesh)).isZero();
    }

    @Test
    void mendsFacesThatMeetInMidEdgeAndPointsThatAreDouble() {
        sketch.walls(0, 20, 0, 0, 300, 0, 300, 200, 0, 200);
        sketch.forgettingPoints();
        sketch.level(0, -1, 0, 0, 0, 200, 300, 200, 300, 0);
        sketch.level(20, 1, 0, 0, 100, 0, 100, 200, 0, 200);
        sketch.level(20, 1, 100, 0, 300, 0, 300, 200, 100, 200);

        assertThatThrownBy(sketch::closed).isInstanceOf(BrokenMeshException.class);

        sketch.shell().mend();
        var mesh = sketch.closed();
        assertThat(mesh.vertexCount()).isEqualTo(8);
        assertThat(mesh.triangleCount()).isEqualTo(12);
        assertThat(Sketch.openEdges(mesh)).isZero();
        assertThat(Sketch.volume(mesh)).isEqualTo(300.0 * 200 * 20);
    }

    @Test
    void mendsWallsThatRunOnBesideAStep() {
        sketch.box(0, 0, 0, 400, 400, 200);
        sketch.box(0, 0, 200, 200, 400, 400);
        // what the upper box stands on is no face of either
        sketch.level(200, 1, Sketch.turned(0, 0, 200, 0, 200, 400, 0, 400));
        sketch.level(200, -1, 0, 0, 200, 0, 200, 400, 0, 400);
        sketch.shell().mend();

        var mesh = sketch.closed();

        assertThat(mesh.vertexCount()).as("an L of six corners, twice").isEqualTo(12);
        assertThat(mesh.triangleCount()).isEqualTo(2 * 12 - 4);
        assertThat(Sketch.openEdges(mesh)).isZero();
        assertThat(Sketch.volume(mesh)).isEqualTo(400.0 * 400 * 200 + 200.0 * 400 * 200);
    }

    @Test
    void goesStraightOnOverAPointHalfAStepBesideAnEdge() {
        sketch.walls(0, 20, 0, 0, 300, 0, 300, 201, 0, 200);
        sketch.level(0, -1, Sketch.turned(0, 0, 300, 0, 300, 201, 0, 200));
        // the top's pieces meet the rim in a point that can't lie on it exactly
        sketch.level(20, 1, 0, 0, 100, 0, 100, 200, 0, 200);
        sketch.level(20, 1, 100, 0, 300, 0, 300, 201, 100, 200);
        sketch.shell().mend();

        var mesh = sketch.closed();

        assertThat(mesh.vertexCount()).isEqualTo(8);
        assertThat(Sketch.openEdges(mesh)).isZero();
    }

    @Test
    void keepsPointsInWhichFinishedTrianglesMeetAnEdge() {
        int top = sketch.point(150, 0, 20);
        int bottom = sketch.point(150, 0, 0);
        int left = sketch.point(0, 0, 0);
        int right = sketch.point(300, 0, 0);
        sketch.wall(300, 0, 300, 200, 0, 20);
        sketch.wall(300, 200, 0, 200, 0, 20);
        sketch.wall(0, 200, 0, 0, 0, 20);
        sketch.level(20, 1, 0, 0, 150, 0, 300, 0, 300, 200, 0, 200);
        sketch.level(0, -1, 0, 0, 0, 200, 300, 200, 300, 0, 150, 0);
        sketch.shell().triangle(left, bottom, sketch.point(0, 0, 20));
        sketch.shell().triangle(bottom, top, sketch.point(0, 0, 20));
        sketch.shell().triangle(bottom, right, sketch.point(300, 0, 20));
        sketch.shell().triangle(bottom, sketch.point(300, 0, 20), top);

        var mesh = sketch.closed();

        assertThat(mesh.vertexCount()).isEqualTo(10);
        assertThat(Sketch.openEdges(mesh)).isZero();
        assertThat(Sketch.volume(mesh)).isEqualTo(300.0 * 200 * 20);
    }

    @Test
    void leavesOutPointsThatNothingUses() {
        sketch.point(7, 7, 7);
        sketch.box(0, 0, 0, 10, 10, 10);
        sketch.point(8, 8, 8);

        assertThat(sketch.closed().vertexCount()).isEqualTo(8);
    }

    @Test
    void givesTheSameBytesEveryTime() {
        sketch.box(0, 0, 0, 300, 200, 20);
        drill(0, 20, 100, 100, 140, 100, 150, 150);
        var once = sketch.closed();
        var twice = sketch.closed();

        assertThat(twice.vertices()).containsExactly(once.vertices());
        assertThat(twice.triangles()).containsExactly(once.triangles());
    }

    @Test
    void refusesAShellOfNothing() {
        assertThatThrownBy(sketch::closed).isInstanceOf(BrokenMeshException.class);
        sketch.shell().mend();
        assertThatThrownBy(sketch::closed).isInstanceOf(BrokenMeshException.class);
    }

    @Test
    void refusesAnOpenShell() {
        sketch.walls(0, 20, 0, 0, 300, 0, 300, 200, 0, 200);
        sketch.level(0, -1, 0, 0, 0, 200, 300, 200, 300, 0);

        assertThatThrownBy(sketch::closed)
                .isInstanceOf(BrokenMeshException.class)
                .hasMessage("an edge has an open side");
    }

    @Test
    void refusesAFaceWithAGapInItsBoundary() {
        sketch.box(0, 0, 0, 300, 200, 20);
        sketch.shell().edge(sketch.level(20, 1), sketch.point(0, 0, 20), sketch.point(50, 50, 20));

        assertThatThrownBy(sketch::closed).isInstanceOf(BrokenMeshException.class);
    }

    @Test
    void refusesFacesWhoseBoundariesCross() {
        sketch.prism(0, 20, 0, 0, 300, 0, 300, 200, 100, -50);

        assertThatThrownBy(sketch::closed).isInstanceOf(BrokenMeshException.class);
    }

    @Test
    void refusesAHoleThatReachesOverTheRim() {
        sketch.box(0, 0, 0, 300, 200, 20);
        drill(0, 20, 250, 80, 350, 90, 340, 120, 260, 110);

        assertThatThrownBy(sketch::closed).isInstanceOf(BrokenMeshException.class);
    }

    @Test
    void refusesAHoleBesideItsFace() {
        sketch.box(0, 0, 0, 300, 200, 20);
        drill(0, 20, 350, 80, 450, 90, 440, 120, 360, 110);

        assertThatThrownBy(sketch::closed)
                .isInstanceOf(BrokenMeshException.class)
                .hasMessage("a hole lies outside its face");
    }

    @Test
    void refusesAFlatTriangle() {
        sketch.box(0, 0, 0, 300, 200, 20);
        int a = sketch.point(10, 50, 20);
        int b = sketch.point(50, 50, 20);
        int c = sketch.point(90, 50, 20);
        sketch.shell().triangle(a, b, c);
        sketch.shell().triangle(c, b, a);

        assertThatThrownBy(sketch::closed)
                .isInstanceOf(BrokenMeshException.class)
                .hasMessage("a triangle has no area");
    }

    @Test
    void refusesABoxTurnedInsideOut() {
        var planes = new Planes();
        var shell = new Shell(planes);
        int a = shell.point(0, 0, 0);
        int b = shell.point(10, 0, 0);
        int c = shell.point(0, 10, 0);
        int d = shell.point(0, 0, 10);
        shell.triangle(a, b, c);
        shell.triangle(a, d, b);
        shell.triangle(a, c, d);
        shell.triangle(b, d, c);

        assertThatThrownBy(shell::closed)
                .isInstanceOf(BrokenMeshException.class)
                .hasMessage("its solid is turned inside out");
    }
}
