package crowdline.sight.picture;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Facet.Tone;
import crowdline.sight.picture.SolidMaker.Ring;
import java.util.List;

/**
 * Puts together what has no wings to speak of: a helicopter in lengths of its rotor's width, somebody under a canopy in lengths
 * of that, whose feet are the middle, and somebody who falls in lengths of their stretched arms. Proportions by eye.
 */
final class SlowSolids {
    private static final double ROTOR_Z = 0.17;
    private static final double CANOPY_Z = 0.95;
    /** Where the lines of a canopy come together. */
    private static final double SHOULDERS_Z = 0.26;

    private final SolidMaker maker = new SolidMaker();

    Solid made() {
        return maker.made();
    }

    /** The cabin with its glass in front, and the thin boom behind it. */
    SlowSolids cabin() {
        Ring tip = new Ring(0.31, 0.02, -0.03, 0.02);
        Ring glass = new Ring(0.20, 0.075, -0.01, 0.085);
        Ring front = new Ring(0.08, 0.09, 0, 0.105);
        Ring back = new Ring(-0.13, 0.08, 0.01, 0.09);
        Ring neck = new Ring(-0.25, 0.028, 0.045, 0.03);
        Ring end = new Ring(-0.62, 0.013, 0.06, 0.014);
        maker.join(tip, glass, Tone.GLASS, Tone.GLASS, Tone.NOSE);
        maker.join(glass, front, Tone.GLASS, Tone.GLASS, Tone.NOSE);
        maker.join(front, back, Tone.TOP, Tone.SIDE, Tone.UNDERSIDE);
        maker.join(back, neck, Tone.TOP, Tone.SIDE, Tone.UNDERSIDE);
        maker.join(neck, end, Tone.TOP, Tone.SIDE, Tone.UNDERSIDE);
        return this;
    }

    /** Four blades on a mast. */
    SlowSolids rotor() {
        double half = 0.02;
        maker.both(
                List.of(
                        new Vec(half, 0, ROTOR_Z),
                        new Vec(-half, 0, ROTOR_Z),
                        new Vec(-half, 0.5, ROTOR_Z),
                        new Vec(half, 0.5, ROTOR_Z)),
                Tone.SIDE,
                Tone.SIDE);
        for (int end : new int[] {1, -1}) {
            maker.one(
                    List.of(
                            new Vec(0, half, ROTOR_Z),
                            new Vec(end * 0.5, half, ROTOR_Z),
                            new Vec(end * 0.5, -half, ROTOR_Z),
                            new Vec(0, -half, ROTOR_Z)),
                    Tone.SIDE);
        }
        maker.one(
                List.of(
                        new Vec(0.03, 0, 0.09),
                        new Vec(-0.03, 0, 0.09),
                        new Vec(-0.012, 0, ROTOR_Z),
                        new Vec(0.012, 0, ROTOR_Z)),
                Tone.SIDE);
        return this;
    }

    SlowSolids skids() {
        double z = -0.16;
        double y = 0.09;
        maker.both(
                List.of(
                        new Vec(0.20, y, z + 0.014),
                        new Vec(-0.14, y, z + 0.014),
                        new Vec(-0.14, y, z - 0.006),
                        new Vec(0.20, y, z - 0.006)),
                Tone.SIDE,
                Tone.SIDE);
        for (double x : new double[] {0.10, -0.08}) {
            maker.both(
                    List.of(
                            new Vec(x + 0.008, y, z),
                            new Vec(x - 0.008, y, z),
                            new Vec(x - 0.008, 0.05, -0.08),
                            new Vec(x + 0.008, 0.05, -0.08)),
                    Tone.SIDE,
                    Tone.SIDE);
        }
        return this;
    }

    /** A fin, and the small rotor at its side. */
    SlowSolids tail() {
        maker.one(
                List.of(
                        new Vec(-0.54, 0, 0.06),
                        new Vec(-0.62, 0, 0.20),
                        new Vec(-0.68, 0, 0.20),
                        new Vec(-0.64, 0, 0.05)),
                Tone.TAIL);
        maker.both(
                List.of(
                        new Vec(-0.46, 0, 0.055),
                        new Vec(-0.52, 0, 0.055),
                        new Vec(-0.52, 0.11, 0.055),
                        new Vec(-0.47, 0.11, 0.055)),
                Tone.TOP,
                Tone.UNDERSIDE);
        return this;
    }

    /** A wing of cloth, bent down at its ends, on lines. */
    SlowSolids canopy() {
        double[] out = {0, 0.17, 0.34, 0.5};
        double[] down = {0, 0.02, 0.08, 0.19};
        double front = 0.17;
        double back = -0.17;
        for (int i = 1; i < out.length; i++) {
            double inZ = CANOPY_Z - down[i - 1];
            double outZ = CANOPY_Z - down[i];
            maker.both(
                    List.of(
                            new Vec(front, out[i - 1], inZ),
                            new Vec(back, out[i - 1], inZ - 0.03),
                            new Vec(back, out[i], outZ - 0.03),
                            new Vec(front, out[i], outZ)),
                    i == 2 ? Tone.NOSE : Tone.TOP,
                    i == 2 ? Tone.NOSE : Tone.BAND);
            maker.both(
                    List.of(
                            new Vec(front, out[i - 1], inZ),
                            new Vec(front, out[i], outZ),
                            new Vec(front, out[i], outZ - 0.05),
                            new Vec(front, out[i - 1], inZ - 0.05)),
                    Tone.SIDE,
                    Tone.SIDE);
        }
        for (int i = 1; i < out.length; i++) {
            for (double x : new double[] {front, back}) {
                maker.both(
                        List.of(
                                new Vec(x, out[i], CANOPY_Z - down[i] - 0.04),
                                new Vec(x - 0.006, out[i] - 0.006, CANOPY_Z - down[i] - 0.04),
                                new Vec(0, 0.02, SHOULDERS_Z)),
                        Tone.SIDE,
                        Tone.SIDE);
            }
        }
        return this;
    }

    /** Somebody upright, from the feet up. */
    SlowSolids hanging() {
        body(
                List.of(new Vec(0, 0.045, SHOULDERS_Z), new Vec(0.035, 0.03, 0.13), new Vec(0, 0.03, 0.13)),
                Tone.UNDERSIDE);
        body(List.of(new Vec(0.02, 0.04, 0.14), new Vec(0.02, 0.012, 0.14), new Vec(0.05, 0.02, 0)), Tone.UNDERSIDE);
        body(List.of(new Vec(-0.01, 0.04, 0.14), new Vec(-0.01, 0.012, 0.14), new Vec(0.03, 0.02, 0)), Tone.UNDERSIDE);
        maker.one(
                List.of(
                        new Vec(0, 0.045, SHOULDERS_Z),
                        new Vec(0, -0.045, SHOULDERS_Z),
                        new Vec(0, -0.035, 0.13),
                        new Vec(0, 0.035, 0.13)),
                Tone.UNDERSIDE);
        maker.join(
                new Ring(0.03, 0.028, SHOULDERS_Z + 0.05, 0.03),
                new Ring(-0.03, 0.028, SHOULDERS_Z + 0.05, 0.03),
                Tone.GLASS,
                Tone.GLASS,
                Tone.GLASS);
        return this;
    }

    private void body(List<Vec> right, Tone tone) {
        maker.both(right, tone, tone);
    }

    /** Somebody flat on their front, arms and legs stretched. */
    SlowSolids lying() {
        maker.join(new Ring(0.20, 0.12, 0, 0.06), new Ring(-0.16, 0.09, 0, 0.06), Tone.TOP, Tone.SIDE, Tone.UNDERSIDE);
        maker.join(
                new Ring(0.36, 0.05, 0.03, 0.05), new Ring(0.24, 0.055, 0.03, 0.055), Tone.NOSE, Tone.NOSE, Tone.NOSE);
        body(
                List.of(
                        new Vec(0.20, 0.10, 0.02),
                        new Vec(0.12, 0.10, 0.02),
                        new Vec(0.22, 0.5, 0.09),
                        new Vec(0.28, 0.5, 0.09)),
                Tone.SIDE);
        body(
                List.of(
                        new Vec(-0.14, 0.09, 0),
                        new Vec(-0.16, 0.02, 0),
                        new Vec(-0.52, 0.20, 0.12),
                        new Vec(-0.50, 0.27, 0.12)),
                Tone.SIDE);
        return this;
    }
}
