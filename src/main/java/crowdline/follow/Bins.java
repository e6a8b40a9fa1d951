package crowdline.follow;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Sample;
import java.util.Arrays;
import java.util.List;

/** The predicted flight cut into bins of phase: where the aircraft is in each and how it moves. Never changes. */
final class Bins {
    /** Width of a bin, seconds of predicted time; a figure has a whole number of them. */
    static final double WIDTH_S = 0.2;
    /** Time over which speeds are taken, seconds: backwards from the bin, as a receiver's readings are. */
    static final double CHORD_S = 1.0;

    private static final double HALF_SPAN_S = 0.1;
    private static final double LEVEL_MPS = 4;
    private static final double STRAIGHT_MPS2 = 2.5;
    private static final double SLOW_MPS = 20;

    final int size;
    final int figures;
    /** First bin of each figure, and one more for the end. */
    final int[] first;

    final int[] figure;
    final double[] xM;
    final double[] yM;
    final double[] zM;
    final double[] vxMps;
    final double[] vyMps;
    final double[] vzMps;
    /** Change of the three speeds, m/s². */
    final double[] axMps2;

    final double[] ayMps2;
    final double[] azMps2;
    /** Where nothing is predicted but a duration. */
    final boolean[] timed;
    /** Straight: such a line is cut short or drawn out to fit. */
    final boolean[] elastic;
    /** Of a straight line flown to a place or a height, the bin after it; 0 elsewhere. */
    final int[] lineEnd;
    /** Whether such a line is flown to a height and not to a place on the A-axis. */
    final boolean[] toHeight;
    /** Level and straight to the end of the figure. */
    final boolean[] ending;

    Bins(Flight flight) {
        List<FigureFlight> flown = flight.figures();
        figures = flown.size();
        first = new int[figures + 1];
        for (int f = 0; f < figures; f++) {
            first[f + 1] = first[f] + binsOf(flown.get(f));
        }
        size = first[figures];
        figure = new int[size];
        xM = new double[size];
        yM = new double[size];
        zM = new double[size];
        vxMps = new double[size];
        vyMps = new double[size];
        vzMps = new double[size];
        axMps2 = new double[size];
        ayMps2 = new double[size];
        azMps2 = new double[size];
        timed = new boolean[size];
        elastic = new boolean[size];
        ending = new boolean[size];
        lineEnd = new int[size];
        toHeight = new boolean[size];
        Track track = new Track(flight.samples());
        for (int f = 0; f < figures; f++) {
            fill(f, flown.get(f), track);
        }
    }

    private static int binsOf(FigureFlight figure) {
        return (int) Math.max(1, Math.round(figure.durationS() / WIDTH_S));
    }

    private void fill(int f, FigureFlight flown, Track track) {
        double width = flown.durationS() / (first[f + 1] - first[f]);
        for (int i = first[f]; i < first[f + 1]; i++) {
            double t = flown.startS() + (i - first[f] + 0.5) * width;
            figure[i] = f;
            timed[i] = !flown.simulated() || !flown.completed();
            xM[i] = track.x(t);
            yM[i] = track.y(t);
            zM[i] = track.z(t);
            double from = Math.max(t - HALF_SPAN_S, 0);
            double to = t + HALF_SPAN_S;
            double span = to - from;
            vxMps[i] = (track.x(to) - track.x(from)) / span;
            vyMps[i] = (track.y(to) - track.y(from)) / span;
            vzMps[i] = (track.z(to) - track.z(from)) / span;
            double h = HALF_SPAN_S * HALF_SPAN_S;
            axMps2[i] = (track.x(to) - 2 * track.x(t) + track.x(t - HALF_SPAN_S)) / h;
            ayMps2[i] = (track.y(to) - 2 * track.y(t) + track.y(t - HALF_SPAN_S)) / h;
            azMps2[i] = (track.z(to) - 2 * track.z(t) + track.z(t - HALF_SPAN_S)) / h;
        }
        for (int i = first[f]; i < first[f + 1]; i++) {
            elastic[i] = !timed[i] && straight(i);
        }
        for (ElementFlight element : flown.elements()) {
            if (!timed[first[f]] && element.ends() != ElementFlight.Ends.OTHERWISE) {
                line(f, element, flown.startS(), width);
            }
        }
        for (int i = first[f + 1] - 1; i >= first[f] && !timed[i] && level(i); i--) {
            ending[i] = true;
        }
    }

    /** Marks the straight bins up to the end of a line. */
    private void line(int f, ElementFlight line, double fromS, double width) {
        int end = Math.min(first[f] + (int) Math.round((line.endS() - fromS) / width), first[f + 1]);
        int start = Math.max(first[f] + (int) Math.round((line.startS() - fromS) / width), first[f]);
        for (int i = end - 1; i >= start; i--) {
            boolean height = line.ends() == ElementFlight.Ends.AT_HEIGHT;
            if (Math.abs(height ? vzMps[i] : vxMps[i]) < LEVEL_MPS) {
                continue;
            }
            elastic[i] = true;
            lineEnd[i] = end;
            toHeight[i] = height;
        }
    }

    private boolean level(int i) {
        return Math.abs(vzMps[i]) < LEVEL_MPS && straight(i);
    }

    private boolean straight(int i) {
        double a2 = axMps2[i] * axMps2[i] + ayMps2[i] * ayMps2[i] + azMps2[i] * azMps2[i];
        double v = Math.sqrt(vxMps[i] * vxMps[i] + vyMps[i] * vyMps[i] + vzMps[i] * vzMps[i]);
        // What changes the speed does not bend the path.
        double along = v < 1 ? 0 : (axMps2[i] * vxMps[i] + ayMps2[i] * vyMps[i] + azMps2[i] * vzMps[i]) / v;
        return v > SLOW_MPS && Math.sqrt(Math.max(0, a2 - along * along)) < STRAIGHT_MPS2;
    }

    /** Bins back from here that make up so many seconds, no further than the first. */
    int back(int bin, int bins) {
        return Math.max(0, bin - bins);
    }

    /** First bin of a figure's second half. */
    int half(int f) {
        return first[f] + length(f) / 2;
    }

    int length(int f) {
        return first[f + 1] - first[f];
    }

    /** Samples read between as straight lines. */
    private static final class Track {
        private final double[] t;
        private final double[][] place;

        Track(List<Sample> samples) {
            t = samples.stream().mapToDouble(Sample::tS).toArray();
            place = new double[][] {
                samples.stream().mapToDouble(s -> s.place().x()).toArray(),
                samples.stream().mapToDouble(s -> s.place().y()).toArray(),
                samples.stream().mapToDouble(s -> s.place().z()).toArray()
            };
        }

        double x(double tS) {
            return at(0, tS);
        }

        double y(double tS) {
            return at(1, tS);
        }

        double z(double tS) {
            return at(2, tS);
        }

        private double at(int coordinate, double tS) {
            double[] p = place[coordinate];
            int low = Arrays.binarySearch(t, tS);
            int i = low >= 0 ? low : -low - 2;
            i = Math.min(Math.max(i, 0), t.length - 2);
            double share = Math.min(Math.max((tS - t[i]) / (t[i + 1] - t[i]), -1), 1);
            return p[i] + share * (p[i + 1] - p[i]);
        }
    }
}
