package crowdline.practice;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.practice.Change.Kind;
import crowdline.show.Act;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** Puts a flight into the time of a practice: when it begins, what is seen of it, and where it is broken off. */
final class Timeline {
    /** The slot begins so long after the practice did, seconds: time to look at the screen first. */
    static final double SLOT_S = 30;

    private static final double MPS_IN_THE_AIR = 15;
    private static final double DATUM_M = 0;
    private static final double STEP_S = 0.1;

    private final Flight plan;
    private final Level level;
    private final long seed;
    private final OtherOrder order;
    private final Margin margin;
    private final SplittableRandom random;

    Timeline(Flight plan, Level level, long seed, OtherOrder order, Margin margin, SplittableRandom random) {
        this.plan = plan;
        this.level = level;
        this.seed = seed;
        this.order = order;
        this.margin = margin;
        this.random = random;
    }

    Optional<PracticeFlight> of(Act flownAct, Flight flight) {
        boolean late = random.nextBoolean();
        double by =
                level.isGusty() ? late ? random.nextDouble(12, 35) : random.nextDouble(7, 15) : random.nextDouble(3, 8);
        double startS = SLOT_S + (late ? by : -by);
        List<Change> changes = new ArrayList<>();
        changes.add(new Change(late ? Kind.LATE : Kind.EARLY, List.of(), "", late ? SLOT_S : startS));
        List<Pose> poses = poses(flight, startS);
        List<Piece> pieces = pieces(flownAct, flight, startS);
        if (order.breaksIn().isPresent() && !breakOff(order.breaksIn().get(), pieces, poses, changes)) {
            return Optional.empty();
        }
        if (order.breaksIn().isEmpty()) {
            flyOff(pieces, poses);
        }
        if (level.isGusty()) {
            changes.add(new Change(Kind.GUSTY, List.of(), "", startS));
            Gusts gusts = new Gusts(random.split());
            poses.replaceAll(p -> gusts.in(p, DATUM_M));
        }
        for (Change change : order.changes()) {
            seen(change, pieces).ifPresent(changes::add);
        }
        changes.sort(Comparator.comparingDouble(Change::seenS));
        PracticeFlight made = new PracticeFlight(
                plan.actId(),
                plan.variant(),
                level,
                seed,
                SLOT_S,
                pieces,
                plan.figures().stream()
                        .collect(Collectors.toMap(FigureFlight::figureId, FigureFlight::name, (a, b) -> a)),
                changes,
                new Flown(poses, List.of()));
        boolean all =
                order.changes().stream().allMatch(c -> made.change(c.kind()).isPresent());
        return all ? Optional.of(made) : Optional.empty();
    }

    /** The poses of a flight, with the way in before it: straight, as it enters, or standing. */
    private static List<Pose> poses(Flight flight, double startS) {
        List<Pose> own = new ArrayList<>();
        for (Sample sample : flight.samples()) {
            Pose pose = Pose.of(sample);
            if (own.isEmpty() || pose.tS() + startS > own.get(own.size() - 1).tS()) {
                own.add(at(pose, pose.tS() + startS));
            }
        }
        Pose first = own.get(0);
        Vec back = velocity(own, 0);
        boolean flies = back.length() > MPS_IN_THE_AIR;
        List<Pose> poses = new ArrayList<>();
        for (double tS = 0; tS < startS - STEP_S / 2; tS += STEP_S) {
            Vec place = flies ? first.place().minus(back.times(startS - tS)) : first.place();
            poses.add(new Pose(tS, place, first.nose(), first.up(), 1));
        }
        poses.addAll(own);
        return poses;
    }

    private static Pose at(Pose pose, double tS) {
        return new Pose(tS, pose.place(), pose.nose(), pose.up(), pose.g());
    }

    private static Vec velocity(List<Pose> poses, int index) {
        Pose a = poses.get(Math.min(index, poses.size() - 2));
        Pose b = poses.get(Math.min(index, poses.size() - 2) + 1);
        return b.place().minus(a.place()).times(1 / (b.tS() - a.tS()));
    }

    private List<Piece> pieces(Act flownAct, Flight flight, double startS) {
        List<Piece> pieces = new ArrayList<>();
        for (FigureFlight figure : flight.figures()) {
            String id = figure.figureId();
            Piece.Kind kind = id.equals(OtherOrder.UNPLANNED_ID)
                    ? Piece.Kind.UNPLANNED
                    : id.equals(OtherOrder.HOLD_ID)
                            ? Piece.Kind.HOLD
                            : flownAct.figure(id).orElseThrow().transit() ? Piece.Kind.WAY : Piece.Kind.FIGURE;
            String name = kind == Piece.Kind.FIGURE ? name(id) : figure.name();
            pieces.add(new Piece(kind, id, name, figure.startS(), figure.endS()).from(startS));
        }
        return pieces;
    }

    private String name(String figureId) {
        return plan.figure(figureId).map(FigureFlight::name).orElse(figureId);
    }

    /** Cuts the flight in the middle of a figure; false where from there no way leads away from the crowd. */
    private boolean breakOff(String figureId, List<Piece> pieces, List<Pose> poses, List<Change> changes) {
        int index = 0;
        while (index < pieces.size() && !pieces.get(index).figureId().equals(figureId)) {
            index++;
        }
        if (index == pieces.size()) {
            return false;
        }
        Piece piece = pieces.get(index);
        double cutS = piece.fromS() + random.nextDouble(0.35, 0.65) * (piece.toS() - piece.fromS());
        int cut = 0;
        while (cut < poses.size() - 1 && poses.get(cut).tS() < cutS) {
            cut++;
        }
        Vec velocity = velocity(poses, cut);
        if (velocity.length() < MPS_IN_THE_AIR || velocity.z() < -0.35 * velocity.length()) {
            return false;
        }
        Pose from = poses.get(cut);
        boolean incident = order.has(Kind.INCIDENT);
        List<Pose> way = incident ? WayOut.sinking(from, velocity, DATUM_M) : WayOut.climbing(from, velocity);
        if (!margin.isKeptBy(way)) {
            return false;
        }
        poses.subList(cut + 1, poses.size()).clear();
        poses.addAll(way);
        pieces.subList(index + 1, pieces.size()).clear();
        pieces.set(index, piece.until(from.tS()));
        pieces.add(new Piece(
                Piece.Kind.AWAY, "", "", from.tS(), poses.get(poses.size() - 1).tS()));
        changes.add(
                new Change(incident ? Kind.INCIDENT : Kind.BREAK_OFF, List.of(figureId), name(figureId), from.tS()));
        return true;
    }

    /** What does not land flies off. */
    private static void flyOff(List<Piece> pieces, List<Pose> poses) {
        Vec velocity = velocity(poses, poses.size() - 1);
        if (velocity.length() > MPS_IN_THE_AIR) {
            Pose last = poses.get(poses.size() - 1);
            poses.addAll(WayOut.climbing(last, velocity));
            pieces.add(new Piece(
                    Piece.Kind.AWAY,
                    "",
                    "",
                    last.tS(),
                    poses.get(poses.size() - 1).tS()));
        }
    }

    /** With its name, and when it is seen: never before something else is flown than was to come. */
    private Optional<Change> seen(Change change, List<Piece> pieces) {
        return switch (change.kind()) {
            case DROPPED -> {
                String id = change.figureIds().get(0);
                yield afterDropped(id, pieces)
                        .map(p -> new Change(change.kind(), change.figureIds(), name(id), p.fromS()));
            }
            case SWAPPED -> {
                String first = change.figureIds().get(0);
                String second = change.figureIds().get(1);
                yield piece(first, pieces)
                        .filter(p -> piece(second, pieces).isPresent())
                        .map(p -> new Change(
                                change.kind(),
                                change.figureIds(),
                                PracticeWords.the(name(second)) + " and " + PracticeWords.the(name(first)),
                                p.fromS()));
            }
            case UNPLANNED ->
                piece(OtherOrder.UNPLANNED_ID, pieces)
                        .map(p -> new Change(change.kind(), List.of(), change.name(), p.fromS()));
            default ->
                piece(OtherOrder.HOLD_ID, pieces).map(p -> new Change(change.kind(), List.of(), "hold", p.fromS()));
        };
    }

    private static Optional<Piece> piece(String id, List<Piece> pieces) {
        return pieces.stream().filter(p -> p.figureId().equals(id)).findFirst();
    }

    /** The first figure that is flown and comes after the dropped one in the plan. */
    private Optional<Piece> afterDropped(String id, List<Piece> pieces) {
        List<String> planned =
                plan.figures().stream().map(FigureFlight::figureId).toList();
        int dropped = planned.indexOf(id);
        return pieces.stream()
                .filter(p -> p.kind() == Piece.Kind.FIGURE && planned.indexOf(p.figureId()) > dropped)
                .findFirst();
    }
}
