package crowdline.sight.picture;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Facet.Tone;
import java.util.ArrayList;
import java.util.List;

/** Puts an aircraft together, in lengths of its wing span. What is made for one side is made for the other as well. */
final class SolidMaker {
    private static final double HALF = 0.5;
    /** Where along a half wing the band on its underside begins and ends. */
    private static final double BAND_FROM = 0.24;

    private static final double BAND_TO = 0.36;

    private final List<Facet> facets = new ArrayList<>();

    Solid made() {
        return new Solid(facets);
    }

    /** A body that runs to a point at the nose and narrow at the tail, through six-sided rings. */
    SolidMaker body(double noseX, double halfWide, double halfTall, double tailLength) {
        Ring tip = new Ring(noseX, 0.012, 0, 0.012);
        Ring cowl = new Ring(noseX * 0.78, halfWide * 0.8, 0, halfTall * 0.8);
        Ring front = new Ring(noseX * 0.45, halfWide, 0, halfTall);
        Ring back = new Ring(-tailLength * 0.35, halfWide * 0.85, 0, halfTall * 0.9);
        Ring tail = new Ring(-tailLength, 0.012, halfTall * 0.2, 0.02);
        join(tip, cowl, true);
        join(cowl, front, true);
        join(front, back, false);
        join(back, tail, false);
        return this;
    }

    /**
     * A six-sided section of a body.
     *
     * @param midZ height of its middle
     */
    record Ring(double x, double halfWide, double midZ, double halfTall) {
        /** The corners on the right side, from the top down. */
        List<Vec> right() {
            return List.of(
                    new Vec(x, halfWide * 0.55, midZ + halfTall),
                    new Vec(x, halfWide, midZ),
                    new Vec(x, halfWide * 0.55, midZ - halfTall));
        }
    }

    private void join(Ring ahead, Ring behind, boolean nose) {
        if (nose) {
            join(ahead, behind, Tone.NOSE, Tone.NOSE, Tone.NOSE);
        } else {
            join(ahead, behind, Tone.TOP, Tone.SIDE, Tone.UNDERSIDE);
        }
    }

    void join(Ring ahead, Ring behind, Tone top, Tone side, Tone under) {
        List<Vec> a = ahead.right();
        List<Vec> b = behind.right();
        facets.add(new Facet(List.of(a.get(0), mirrored(a.get(0)), mirrored(b.get(0)), b.get(0)), top, top));
        both(List.of(a.get(0), b.get(0), b.get(1), a.get(1)), side, side);
        both(List.of(a.get(1), b.get(1), b.get(2), a.get(2)), under, under);
        facets.add(new Facet(List.of(a.get(2), b.get(2), mirrored(b.get(2)), mirrored(a.get(2))), under, under));
    }

    /** The glass over the pilot, which shows where the top is. */
    SolidMaker canopy(double frontX, double backX, double halfWide, double topZ) {
        double foot = topZ * 0.5;
        double ridge = (frontX + backX) / 2 + (frontX - backX) * 0.1;
        Vec top = new Vec(ridge, 0, topZ);
        Vec front = new Vec(frontX, 0, foot);
        Vec back = new Vec(backX, 0, foot);
        Vec side = new Vec(ridge, halfWide, foot);
        both(List.of(front, top, side), Tone.GLASS, Tone.GLASS);
        both(List.of(top, back, side), Tone.GLASS, Tone.GLASS);
        return this;
    }

    /**
     * A pair of wings, flat, with a band across the underside.
     *
     * @param frontX leading edge at the root
     * @param backX trailing edge at the root
     * @param tipFrontX leading edge at the tip
     * @param tipBackX trailing edge at the tip
     * @param z height of it
     */
    SolidMaker wing(double frontX, double backX, double tipFrontX, double tipBackX, double z) {
        double[] out = {0, BAND_FROM, BAND_TO, HALF};
        for (int i = 1; i < out.length; i++) {
            double in = out[i - 1] / HALF;
            double next = out[i] / HALF;
            both(
                    List.of(
                            new Vec(mixed(frontX, tipFrontX, in), out[i - 1], z),
                            new Vec(mixed(backX, tipBackX, in), out[i - 1], z),
                            new Vec(mixed(backX, tipBackX, next), out[i], z),
                            new Vec(mixed(frontX, tipFrontX, next), out[i], z)),
                    Tone.TOP,
                    i == 2 ? Tone.BAND : Tone.UNDERSIDE);
        }
        return this;
    }

    /** What holds two wings apart. */
    SolidMaker struts(double x, double lowZ, double highZ, double y) {
        for (double at : new double[] {x, x - 0.09}) {
            both(
                    List.of(
                            new Vec(at + 0.012, y, highZ),
                            new Vec(at - 0.012, y, highZ),
                            new Vec(at - 0.012, y, lowZ),
                            new Vec(at + 0.012, y, lowZ)),
                    Tone.SIDE,
                    Tone.SIDE);
        }
        return this;
    }

    /** A tailplane and a fin. */
    SolidMaker tail(double frontX, double backX, double halfSpan, double finZ) {
        double z = 0.015;
        double swept = (frontX - backX) * 0.45;
        both(
                List.of(
                        new Vec(frontX, 0, z),
                        new Vec(backX, 0, z),
                        new Vec(backX, halfSpan, z),
                        new Vec(frontX - swept, halfSpan, z)),
                Tone.TOP,
                Tone.UNDERSIDE);
        facets.add(new Facet(
                List.of(
                        new Vec(frontX, 0, 0.02),
                        new Vec(frontX - swept, 0, finZ),
                        new Vec(backX, 0, finZ),
                        new Vec(backX, 0, 0.02)),
                Tone.TAIL,
                Tone.TAIL));
        return this;
    }

    /** A piece that is there once, the same from both sides. */
    void one(List<Vec> corners, Tone tone) {
        facets.add(new Facet(corners, tone, tone));
    }

    /** A piece of the right side, and the same on the left. */
    void both(List<Vec> right, Tone outside, Tone inside) {
        facets.add(new Facet(right, outside, inside));
        List<Vec> left = new ArrayList<>();
        for (int i = right.size() - 1; i >= 0; i--) {
            left.add(mirrored(right.get(i)));
        }
        facets.add(new Facet(left, outside, inside));
    }

    private static Vec mirrored(Vec corner) {
        return new Vec(corner.x(), -corner.y(), corner.z());
    }

    private static double mixed(double a, double b, double share) {
        return a + (b - a) * share;
    }
}
