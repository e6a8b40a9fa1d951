package crowdline.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * How soon a change could be told by somebody who knows how the trial is flown. He is told when each figure begins, where and how
 * fast, the aircraft, the wind, and what other pilots make of whatever may come next from that very place and state: figures, ways,
 * landings, and even what is in no plan ({@link Fork}). Not told is which of these comes, and what this pilot does. He says what
 * explains the places and speeds since then best. Nobody in the world knows as much; what boundaries cost comes on top ({@link Bound}).
 */
final class Ideal {
    private static final int FLIGHTS = 8;
    /** Figures and ways flown in advance. */
    private static final int AHEAD = 5;
    /** Seconds from a change for which he is asked. */
    private static final double LONGEST_S = 90;

    /** Seconds from one look that counts to the next. */
    private static final double AGO_S = 3;
    /** Places and speeds, and one look and the next, are off together: their evidence counts for so much. Judgement. */
    private static final double ALL_AT_ONCE = 0.5;
    /** Metres, and metres a second: noise of a receiver, and what eight flights say too little of. */
    private static final double NOISE_M = 5;

    private static final double NOISE_MPS = 2;
    /** Chance at a boundary that something else comes than planned, of each kind that may. */
    private static final double CHANGED = 0.005;

    private final List<Double> tellsS = new ArrayList<>();
    private double wrongS;
    private double allS;
    private int doubted;
    private double doubtedS;
    private double boundaries;
    private int asPlanned;

    /** Something that may come: how a flight would go on, and what it is called while the first of it is flown. */
    private record Guess(int said, double prior, List<Truth> flights) {}

    void count(Display display, Scenario scenario, long seed) {
        List<Integer> order = scenario.order(display, seed);
        Truth truth = scenario.fly(display, seed);
        allS += truth.endS() - truth.instants.get(0).tS();
        for (int i = 2; i < order.size(); i++) {
            boolean changed = order.get(i) != order.get(i - 1) + 1;
            // What follows something unknown, and the last of three changes of a swap, can be told beforehand.
            boolean known =
                    order.get(i - 1) == Truth.UNKNOWN || order.subList(0, i).contains(order.get(i - 1) + 1);
            boundaries += known || changed ? 0 : 1;
            if (!known && (changed || i % 4 == 2)) {
                ask(display, scenario, order, i, truth, seed);
            }
        }
    }

    /** Asks from the beginning of one of the figures flown on, until it is over. */
    void ask(Display display, Scenario scenario, List<Integer> order, int at, Truth truth, long seed) {
        double startS = truth.flown.get(at).startS();
        double endS = Math.min(truth.flown.get(at).endS(), startS + LONGEST_S);
        int is = order.get(at);
        boolean changed = is != order.get(at - 1) + 1;
        List<Guess> guesses = guesses(display, scenario, order.subList(0, at), at, seed);
        List<double[]> evidence =
                guesses.stream().map(g -> evidence(g, truth, startS, endS)).toList();
        double lastWrongS = Double.NaN;
        double lostS = 0;
        for (int k = 0; k < evidence.get(0).length; k++) {
            int best = 0;
            for (int g = 1; g < guesses.size(); g++) {
                best = evidence.get(g)[k] > evidence.get(best)[k] ? g : best;
            }
            boolean right = guesses.get(best).said == is;
            lostS += right ? 0 : Score.STEP_S;
            lastWrongS = right ? lastWrongS : k * Score.STEP_S;
        }
        if (changed) {
            wrongS += lostS;
            tellsS.add(Double.isNaN(lastWrongS) ? 0 : lastWrongS + Score.STEP_S);
        } else {
            asPlanned++;
            doubtedS += lostS;
            doubted += lostS > 1 ? 1 : 0;
        }
    }

    /** The logarithm of how likely a guess is, in steps of {@link Score#STEP_S}: by what is seen now, some seconds ago and before. */
    private static double[] evidence(Guess guess, Truth truth, double startS, double endS) {
        double[] sums = new double[(int) ((endS - startS) / Score.STEP_S) + 1];
        int ago = (int) Math.round(AGO_S / Score.STEP_S);
        for (int k = 0; k < sums.length; k++) {
            double before = k < ago ? Math.log(guess.prior) : sums[k - ago];
            sums[k] = before + fits(guess, truth, startS + k * Score.STEP_S);
        }
        return sums;
    }

    /** The logarithm of how well a place and a speed are explained, by a bell in each direction. */
    private static double fits(Guess guess, Truth truth, double t) {
        double[] seen = numbers(truth.at(t));
        List<double[]> all = guess.flights.stream().map(f -> numbers(f.at(t))).toList();
        double sum = 0;
        for (int k = 0; k < seen.length; k++) {
            int which = k;
            double mean = all.stream().mapToDouble(n -> n[which]).average().orElseThrow();
            double noise = k < 3 ? NOISE_M : NOISE_MPS;
            double variance = all.stream()
                                    .mapToDouble(n -> (n[which] - mean) * (n[which] - mean))
                                    .sum()
                            / (all.size() - 1)
                    + noise * noise;
            double off = (seen[k] - mean) * (seen[k] - mean) / variance;
            sum -= 0.5 * Math.log(variance) + 0.5 * (all.size() + 1) * Math.log1p(off / all.size());
        }
        return ALL_AT_ONCE * sum;
    }

    private static double[] numbers(Truth.Instant i) {
        V3 p = i.place();
        V3 v = i.groundMps();
        return new double[] {p.x(), p.y(), p.z(), v.x(), v.y(), v.z()};
    }

    private static List<Guess> guesses(Display display, Scenario scenario, List<Integer> before, int at, long seed) {
        List<Guess> guesses = new ArrayList<>();
        List<Integer> plan = display.asPlanned();
        Set<Integer> ways = display.ways();
        int last = plan.size() - 1;
        int due = before.get(at - 1) + 1;
        List<Integer> then = plan.subList(Math.min(due, last), plan.size());
        int figure = due;
        while (figure < last && ways.contains(figure)) {
            figure++;
        }
        boolean landing = display.timed(last);
        List<List<Integer>> orders = new ArrayList<>();
        orders.add(then);
        if (figure < last) {
            orders.add(plan.subList(figure + 1, plan.size()));
        }
        int begin = at - 1;
        while (begin > 1 && !ways.contains(before.get(at - 1)) && ways.contains(before.get(begin - 1))) {
            begin--;
        }
        if (!ways.contains(before.get(at - 1))) {
            orders.add(joined(before.subList(begin, at), then));
        }
        for (int f = 1; f < due; f++) {
            if (!before.contains(f) && !ways.contains(f)) {
                int from = f;
                while (from > 1 && ways.contains(from - 1)) {
                    from--;
                }
                orders.add(joined(plan.subList(from, f + 1), then));
            }
        }
        if (due < last) {
            orders.add(landing ? List.of(last) : List.of(Truth.UNKNOWN));
        }
        for (List<Integer> next : orders) {
            add(guesses, display, scenario, before, next, at, seed, guesses.isEmpty() ? 1 - 5 * CHANGED : CHANGED);
        }
        for (Scenario.Change unknown : List.of(Scenario.Change.STRANGE, Scenario.Change.REPOSITION)) {
            add(
                    guesses,
                    display,
                    scenario.with(unknown),
                    before,
                    joined(List.of(Truth.UNKNOWN), then),
                    at,
                    seed,
                    CHANGED);
        }
        return guesses;
    }

    private static List<Integer> joined(List<Integer> first, List<Integer> then) {
        List<Integer> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }

    private static void add(
            List<Guess> guesses,
            Display display,
            Scenario scenario,
            List<Integer> before,
            List<Integer> next,
            int at,
            long seed,
            double prior) {
        List<Integer> order = joined(before, next.subList(0, Math.min(next.size(), AHEAD)));
        List<Truth> flights = new ArrayList<>();
        for (int other = 1; other <= FLIGHTS; other++) {
            flights.add(scenario.fly(display, order, new Fork(at, other), seed));
        }
        guesses.add(new Guess(next.get(0), prior, flights));
    }

    void add(Ideal other) {
        tellsS.addAll(other.tellsS);
        wrongS += other.wrongS;
        allS += other.allS;
        doubted += other.doubted;
        doubtedS += other.doubtedS;
        boundaries += other.boundaries;
        asPlanned += other.asPlanned;
    }

    /** Seconds after which such a share of the changes is told for good. */
    double toldS(double share) {
        double[] sorted = tellsS.stream().mapToDouble(d -> d).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.min(sorted.length - 1.0, share * sorted.length)];
    }

    /** How many of the boundaries as planned that he was asked about he doubted for more than a second. */
    int doubted() {
        return doubted;
    }

    String line(String name) {
        return String.format(
                Locale.ROOT,
                "%-36s %d changes told after %.1f %.1f %.1f s, which costs %.2f %%; of %d boundaries as planned %d doubted, which would cost %.2f %%",
                name,
                tellsS.size(),
                toldS(0.5),
                toldS(0.75),
                toldS(0.9),
                100 * wrongS / allS,
                asPlanned,
                doubted,
                100 * doubtedS / Math.max(asPlanned, 1) * boundaries / allS);
    }
}
