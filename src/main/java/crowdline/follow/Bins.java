package crowdline.follow;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
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
    /** What only turns round climbs and sinks no faster than this, and turns through more than this. Tuned. */
    private static final double NEARLY_LEVEL_MPS = 16;

    private static final double ROUND_RAD = 2;
    /** So long before its first figure an aircraft comes straight in to where that begins, seconds. Tuned. */
    private static final double LEAD_S = 6;

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
    /** Such a height above the datum, or place on the A-axis, metres. */
    final double[] goalM;
    /**
     * Of each figure of which only the time is known, the first bin of the last way to what follows: straight in to where
     * that begins. The bin after the figure where there is none.
     */
    final int[] leadFrom;
    /** Of each figure, whether it only turns the aircraft round in nearly level flight, in whatever room that takes. */
    final boolean[] round;
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
        goalM = new double[size];
        leadFrom = Arrays.copyOfRange(first, 1, figures + 1);
        round = new boolean[figures];
        PredictedPath path = new PredictedPath(flight.samples());
        for (int f = 0; f < figures; f++) {
            fill(f, flown.get(f), path);
        }
        for (int f = 0; f + 1 < figures; f++) {
            if (timed[first[f]] && !timed[first[f + 1]]) {
                lead(f);
            }
        }
    }

    /** The last seconds of a timed figure lead straight to where the next one begins. */
    private void lead(int f) {
        int next = first[f + 1];
        leadFrom[f] = Math.max(first[f], next - (int) Math.round(LEAD_S / WIDTH_S));
        for (int i = leadFrom[f]; i < next; i++) {
            double beforeS = (next - i) * WIDTH_S;
            vxMps[i] = vxMps[next];
            vyMps[i] = vyMps[next];
            vzMps[i] = 0;
            axMps2[i] = 0;
            ayMps2[i] = 0;
            azMps2[i] = 0;
            xM[i] = xM[next] - beforeS * vxMps[next];
            yM[i] = yM[next] - beforeS * vyMps[next];
            zM[i] = zM[next];
        }
    }

    private static int binsOf(FigureFlight figure) {
        return (int) Math.max(1, Math.round(figure.durationS() / WIDTH_S));
    }

    private void fill(int f, FigureFlight flown, PredictedPath path) {
        double width = flown.durationS() / (first[f + 1] - first[f]);
        for (int i = first[f]; i < first[f + 1]; i++) {
            double t = flown.startS() + (i - first[f] + 0.5) * width;
            figure[i] = f;
            timed[i] = !flown.simulated() || !flown.completed();
            xM[i] = path.x(t);
            yM[i] = path.y(t);
            zM[i] = path.z(t);
            double from = Math.max(t - HALF_SPAN_S, 0);
            double to = t + HALF_SPAN_S;
            double span = to - from;
            vxMps[i] = (path.x(to) - path.x(from)) / span;
            vyMps[i] = (path.y(to) - path.y(from)) / span;
            vzMps[i] = (path.z(to) - path.z(from)) / span;
            double h = HALF_SPAN_S * HALF_SPAN_S;
            axMps2[i] = (path.x(to) - 2 * path.x(t) + path.x(t - HALF_SPAN_S)) / h;
            ayMps2[i] = (path.y(to) - 2 * path.y(t) + path.y(t - HALF_SPAN_S)) / h;
            azMps2[i] = (path.z(to) - 2 * path.z(t) + path.z(t - HALF_SPAN_S)) / h;
        }
        for (int i = first[f]; i < first[f + 1]; i++) {
            elastic[i] = !timed[i] && straight(i);
        }
        for (ElementFlight element : flown.elements()) {
            if (!timed[first[f]] && element.ends() instanceof ElementFlight.AtHeight line) {
                line(f, element, flown.startS(), width, true, line.heightM());
            } else if (!timed[first[f]] && element.ends() instanceof ElementFlight.AtPlace line) {
                line(f, element, flown.startS(), width, false, line.alongM());
            }
        }
        round[f] = !timed[first[f]] && turnsRound(f);
        for (int i = first[f + 1] - 1; i >= first[f] && !timed[i] && level(i); i--) {
            ending[i] = true;
        }
    }

    /** Marks the straight bins up to the end of a line; a line of no length has one, for it may be needed after all. */
    private void line(int f, ElementFlight line, double fromS, double width, boolean height, double goal) {
        int end = Math.min(first[f] + (int) Math.round((line.endS() - fromS) / width), first[f + 1]);
        int start = Math.max(first[f] + (int) Math.round((line.startS() - fromS) / width), first[f]);
        start = Math.max(first[f], Math.min(start, end - 1));
        for (int i = end - 1; i >= start; i--) {
            if (Math.abs(height ? vzMps[i] : vxMps[i]) < LEVEL_MPS) {
                continue;
            }
            elastic[i] = true;
            lineEnd[i] = end;
            toHeight[i] = height;
            goalM[i] = goal;
        }
    }

    private boolean turnsRound(int f) {
        double turned = 0;
        double most = 0;
        for (int i = first[f] + 1; i < first[f + 1]; i++) {
            if (Math.abs(vzMps[i]) > NEARLY_LEVEL_MPS) {
                return false;
            }
            double cross = vxMps[i - 1] * vyMps[i] - vyMps[i - 1] * vxMps[i];
            double dot = vxMps[i - 1] * vxMps[i] + vyMps[i - 1] * vyMps[i];
            turned += Math.atan2(cross, dot);
            most = Math.max(most, Math.abs(turned));
        }
        return most > ROUND_RAD;
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

    /** Whether a bin is on the way in to the next figure. */
    boolean isLead(int bin) {
        return bin >= leadFrom[figure[bin]];
    }

    /** Whether a timed figure is far enough on to come to its end at once: a third of the time to its way in has gone. */
    boolean mayEndEarly(int bin) {
        int start = first[figure[bin]];
        int lead = leadFrom[figure[bin]];
        return lead < first[figure[bin] + 1] && bin < lead && bin > start + (lead - start) / 3;
    }

    /** First bin of a figure's second half. */
    int half(int f) {
        return first[f] + length(f) / 2;
    }

    int length(int f) {
        return first[f + 1] - first[f];
    }
}
