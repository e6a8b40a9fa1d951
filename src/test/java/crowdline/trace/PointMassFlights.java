package crowdline.trace;

import crowdline.flight.body.Vec;
import crowdline.telemetry.Reading;
import crowdline.trace.FlightOf.Flown;
import crowdline.trace.PointMass.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Display flights of a {@link PointMass}, in any order of figures, with ways between them, as a receiver hears them. */
final class PointMassFlights {
    private static final List<Machine> MACHINES = List.of(
            new Machine("light aerobatic biplane", 64, 27, 4.5, 4.0, 170),
            new Machine("strong aerobatic monoplane", 82, 30, 6, 7.5, 380),
            new Machine("old trainer", 55, 24, 4, 2.2, 75),
            new Machine("jet trainer", 140, 50, 4.5, 3.6, 160),
            new Machine("piston fighter", 130, 43, 4, 3.6, 80));

    private static final List<String> ALL = List.of(
            "loop",
            "half Cuban",
            "reverse half Cuban",
            "Cuban eight",
            "half loop with roll out on top",
            "stall turn",
            "humpty bump",
            "quarter clover",
            "barrel roll",
            "steep turn",
            "wing-over",
            "lazy eight",
            "chandelle",
            "Derry turn",
            "slow roll",
            "four-point roll",
            "low pass",
            "knife edge pass",
            "spin",
            "shark's tooth",
            "pull to vertical");
    private static final int FIGURES = 12;

    private final PointMass a;
    private final List<Flown> flown = new ArrayList<>();
    private final double baseM;

    private PointMassFlights(PointMass mass, double baseM) {
        a = mass;
        this.baseM = baseM;
    }

    /** One flight of a kind of aircraft, one of the list. */
    static FlightOf of(long seed) {
        SplittableRandom random = new SplittableRandom(seed * 31337);
        Machine machine = MACHINES.get(Math.floorMod(seed, MACHINES.size()));
        double[] hz = {5, 1, 10, 5, 2};
        double rate = hz[Math.floorMod(seed / MACHINES.size(), hz.length)];
        double wind = seed % 3 == 0 ? 6 : 0;
        PointMassFlights flight =
                new PointMassFlights(new PointMass(machine, random, wind), 150 + 150 * random.nextDouble());
        flight.act(random);
        boolean gaps = seed % 4 == 1;
        return new FlightOf(
                "point mass " + seed + ", " + machine.kind() + ", " + rate + " Hz" + (wind > 0 ? ", wind" : "")
                        + (gaps ? ", gaps" : ""),
                machine.kind(),
                received(flight.a.instants, rate, gaps, random),
                flight.flown);
    }

    private static List<Reading> received(List<double[]> instants, double hz, boolean gaps, SplittableRandom random) {
        List<Reading> log = new ArrayList<>();
        double next = 0;
        double[] slow = {0, 0, 0};
        double off = 40 * random.nextGaussian();
        double gapUntil = 0;
        for (double[] i : instants) {
            if (i[0] < next) {
                continue;
            }
            next += 1 / hz;
            double kept = Math.exp(-1 / hz / 25);
            for (int k = 0; k < 3; k++) {
                slow[k] = kept * slow[k] + 3 * Math.sqrt(1 - kept * kept) * random.nextGaussian();
            }
            if (gaps && i[0] > gapUntil && random.nextDouble() < 0.02 / hz) {
                gapUntil = i[0] + 2 + 3 * random.nextDouble();
            }
            if (gaps && (i[0] < gapUntil || random.nextDouble() < 0.15)) {
                continue;
            }
            log.add(new Reading(
                    i[0],
                    i[1] + slow[0] + 1.5 * random.nextGaussian(),
                    i[2] + slow[1] + 1.5 * random.nextGaussian(),
                    i[3] + off + slow[2] + 2.5 * random.nextGaussian(),
                    null,
                    null));
        }
        return log;
    }

    private void act(SplittableRandom random) {
        a.at = new Vec(a.at.x(), a.at.y(), baseM);
        way(random);
        List<String> left = new ArrayList<>(ALL);
        if (a.machine.mps() > 100) {
            left.remove("spin");
        }
        for (int n = 0; n < FIGURES; n++) {
            String name = left.remove(random.nextInt(left.size()));
            begin(name, random);
            double from = a.tS();
            fly(name, random);
            flown.add(new Flown(name, from, a.tS()));
            if (random.nextDouble() < 0.5) {
                way(random);
            } else {
                a.level();
                a.line(0.5 + 4 * random.nextDouble(), 0.9);
            }
        }
        way(random);
    }

    /** Round to come back, climbing or sinking a little, and on along a line. */
    private void way(SplittableRandom random) {
        double from = a.tS();
        a.level();
        double first = random.nextDouble() < 0.4 ? 90 : random.nextDouble() < 0.5 ? 220 : 180;
        double side = random.nextBoolean() ? 1 : -1;
        a.turn(side * first, 45 + 20 * random.nextDouble(), 5 * random.nextDouble() - 1, true, 1);
        if (first != 180) {
            a.line(1 + 2 * random.nextDouble(), 1);
            a.turn(
                    first == 90 ? -side * 270 : side * 40 * -1,
                    45 + 20 * random.nextDouble(),
                    3 * random.nextDouble(),
                    true,
                    1);
        }
        a.line(2 + 5 * random.nextDouble(), 1);
        flown.add(new Flown("way", from, a.tS()));
    }

    /** To the height and speed it takes; part of no figure. */
    private void begin(String name, SplittableRandom random) {
        double from = a.tS();
        a.level();
        double want = switch (name) {
                    case "spin", "dive" -> 1.0;
                    case "stall turn", "humpty bump", "quarter clover", "pull to vertical" -> 1.05;
                    case "slow roll",
                            "low pass",
                            "knife edge pass",
                            "four-point roll",
                            "steep turn",
                            "Derry turn",
                            "barrel roll" -> 0.8;
                    default -> 1.0;
                }
                * a.machine.mps();
        double energy = a.at.z() - baseM;
        if (a.mps < 0.9 * want && energy > 60) {
            a.pull(20, -0.2, 0.8);
            a.lineToSpeed(want, 1);
            a.pullTo(0, 2.5, 1);
        } else if (a.at.z() < baseM - 60 || name.equals("spin") || name.equals("dive")) {
            a.pullTo(12, 2, 1);
            a.lineToHeight(baseM + (name.equals("spin") || name.equals("dive") ? 350 : 0), 1);
            a.pull(12, -0.3, 1);
        }
        a.level();
        a.mps = Math.max(a.mps, 0.92 * want * a.about(0.03));
        a.line(1 + 3 * random.nextDouble(), 1);
        flown.add(new Flown("way", from, a.tS()));
    }

    private void fly(String name, SplittableRandom random) {
        double g = a.machine.g() * a.about(0.08);
        double side = random.nextBoolean() ? 1 : -1;
        double roll = a.machine.rollDegPerS() * a.about(0.1);
        double base = a.at.z();
        switch (name) {
            case "loop" -> a.pull(360, g, 1);
            case "half Cuban" -> halfCuban(g, roll, base);
            case "Cuban eight" -> {
                a.pull(225 * a.about(0.02), g, 1);
                a.line(0.6 * a.about(0.3), 0.8);
                a.roll(180, roll, 0.8);
                a.lineToHeight(base + 0.4 * (a.at.z() - base), 0.8);
                a.pull(270 * a.about(0.02), g, 1);
                a.line(0.6 * a.about(0.3), 0.8);
                a.roll(180, roll, 0.8);
                a.lineToHeight(base + 0.3 * (a.at.z() - base), 0.8);
                a.pullTo(0, g, 1);
            }
            case "reverse half Cuban" -> {
                a.pullTo(45, g, 1);
                a.line(1.0 * a.about(0.2), 1);
                a.roll(180, roll, 1);
                a.line(1.0 * a.about(0.2), 1);
                a.pull(225, 0.7 * g, 0.6);
            }
            case "half loop with roll out on top" -> {
                a.pull(180, g, 1);
                a.line(0.4 * a.about(0.2), 1);
                a.roll(180, roll, 1);
                a.line(0.8, 1);
            }
            case "stall turn" -> {
                a.pullTo(89, g, 1);
                a.over(2.2 * a.about(0.15));
                a.lineToHeight(base + 90, 0.5);
                a.pullTo(0, g, 1);
            }
            case "pull to vertical" -> {
                a.pullTo(89, g, 1);
                a.lineToSpeed(1.6 * a.machine.slowMps(), 1);
                a.pull(89, -1.5, 1);
            }
            case "humpty bump" -> {
                a.pullTo(89, g, 1);
                a.lineToSpeed(1.4 * a.machine.slowMps(), 1);
                a.pull(180, 3, 1);
                a.lineToHeight(base + 90, 0.5);
                a.pullTo(0, g, 1);
            }
            case "quarter clover" -> {
                a.pullTo(89, g, 1);
                a.line(0.3, 1);
                a.roll(90, roll, 1);
                a.lineToSpeed(1.5 * a.machine.slowMps(), 1);
                a.pull(180, 3, 1);
                a.lineToHeight(base + 90, 0.5);
                a.pullTo(0, g, 1);
            }
            case "barrel roll" -> a.barrel(a.machine.mps() > 100 ? 11 : 5.5 * a.about(0.12), side);
            case "steep turn" -> a.turn(side * 360, 64 + 8 * random.nextDouble(), 0, false, 1);
            case "wing-over" -> wingOver(side, 30);
            case "lazy eight" -> {
                wingOver(side, 28);
                wingOver(-side, 28);
            }
            case "chandelle" -> a.turn(side * 180, 45, 22 * a.about(0.1), true, 1);
            case "Derry turn" -> {
                a.turn(side * 60 * a.about(0.1), 63, 0, false, 1);
                a.roll(-side * 240, roll, 1);
                a.turn(-side * 60 * a.about(0.1), 63, 0, false, 1);
            }
            case "slow roll" -> a.roll(360, 45 * a.about(0.1), 1);
            case "four-point roll" -> {
                for (int k = 0; k < 4; k++) {
                    a.roll(90, roll, 1);
                    a.line(0.6, 1);
                }
            }
            case "low pass" -> a.line(9 * a.about(0.2), 0.9);
            case "knife edge pass" -> {
                a.roll(90, roll, 1);
                a.line(4 * a.about(0.2), 1);
                a.roll(-90, roll, 1);
            }
            case "spin" -> a.spin(2, 2.4 * a.about(0.1), a.machine.slowMps() * 1.1);
            case "shark's tooth" -> {
                a.pullTo(45, g, 1);
                a.line(0.5, 1);
                a.roll(180, roll, 1);
                a.lineToSpeed(1.4 * a.machine.slowMps(), 1);
                a.pull(135, 3, 0.6);
                a.lineToHeight(base + 90, 0.5);
                a.pullTo(0, g, 1);
            }
            case "dive" -> {
                a.pull(30, -0.3, 0.7);
                a.line(1.5, 0.8);
                a.lineToSpeed(1.05 * a.machine.mps(), 0.8);
                a.pullTo(0, 3, 0.8);
            }
            default -> throw new IllegalArgumentException(name);
        }
    }

    private void halfCuban(double g, double roll, double base) {
        a.pull(225 * a.about(0.02), g, 1);
        a.line(0.6 * a.about(0.3), 0.8);
        a.roll(180, roll, 0.8);
        a.lineToHeight(base + 0.3 * (a.at.z() - base), 0.8);
        a.pullTo(0, g, 1);
    }

    private void wingOver(double side, double climb) {
        a.turn(side * 180, 55 + 10 * a.random.nextDouble(), climb * a.about(0.1), false, 0.9);
    }
}
