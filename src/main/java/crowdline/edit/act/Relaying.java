package crowdline.edit.act;

import crowdline.arrange.Arranged;
import crowdline.arrange.Arranger;
import crowdline.arrange.FreshId;
import crowdline.flight.air.Air;
import crowdline.layout.LaidOut;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Lays an act out again: each variant, with a figure that two of them fly drawn as in the first; two that fly the same figures
 * fly all of it alike. Ids and what is said stay
 * with the figures, and with the transits as far as they stay; what was said in a transit that is gone goes to the act. An
 * act in which nothing was laid out is left as it was typed.
 */
final class Relaying {
    private final Catalogue shipped;
    private volatile @Nullable Relaid last;

    Relaying(Catalogue shipped) {
        this.shipped = shipped;
    }

    /**
     * The act laid out again.
     *
     * @param show with what flies it
     * @param before the act as it was, whose transits are taken over
     * @param act the act as it is to be; the transits in it are of no matter
     */
    Relaid of(Show show, Act before, Act act) {
        Arranger arranger = new Arranger(shipped.with(show.figures()));
        Aircraft aircraft = show.aircraft(act.airframe()).orElse(null);
        if (aircraft instanceof TimedAircraft) {
            return timed(arranger, before, act);
        }
        if (!(aircraft instanceof Airframe airframe) || act.figures().stream().noneMatch(Figure::isLaidOut)) {
            return new Relaid(act, List.of());
        }
        return new Flown(arranger, show, airframe, before, act).laid();
    }

    /**
     * The act laid out again.
     *
     * @param figureId the figure that was edited: its own trouble may not grow, that of others may
     * @throws CannotBe with the layout's sentence if something could not be had that could be had before
     */
    Act checked(Show show, Act before, Act act, String figureId) throws CannotBe {
        Relaid relaid = of(show, before, act);
        for (LaidOut.Finding finding : relaid.findings()) {
            boolean known = finding.asIs()
                    || known(show, before).stream()
                            .anyMatch(k -> k.equals(finding)
                                    || (k.wishId().equals(finding.wishId()) && !figureId.equals(finding.wishId())));
            if (!known) {
                throw new CannotBe(begun(finding.message()) + ".");
            }
        }
        last = relaid;
        return relaid.act();
    }

    private static String begun(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    /** What could not be had before either. The act before is most often the one that was laid out last. */
    private List<LaidOut.Finding> known(Show show, Act before) {
        Relaid known = last;
        return known != null && known.act().equals(before)
                ? known.findings()
                : of(show, before, before).findings();
    }

    /** Nothing is flown between figures that are only timed. */
    private static Relaid timed(Arranger arranger, Act before, Act act) {
        List<Figure> figures = arranger.timed(
                        act.figures().stream().filter(f -> !f.transit()).toList(), null)
                .figures();
        Set<String> kept = figures.stream().map(Figure::id).collect(Collectors.toSet());
        List<Variant> variants = act.variants().stream()
                .map(v -> v.inOrder(v.order().stream().filter(kept::contains).toList()))
                .toList();
        return new Relaid(
                act.flown(null, figures, variants).withFigures(figures, remarks(act, new OldTransits(before))),
                List.of());
    }

    private static List<Remark> remarks(Act act, OldTransits old) {
        List<Remark> remarks = new ArrayList<>(act.remarks());
        remarks.addAll(old.leftOver());
        return remarks;
    }

    /** An act being laid out, variant by variant. */
    private static final class Flown {
        private final Arranger arranger;
        private final Show show;
        private final Airframe airframe;
        private final Act act;
        private final OldTransits old;
        private final Set<String> taken = new HashSet<>();
        private final Map<String, Figure> done = new LinkedHashMap<>();
        private final List<Variant> variants = new ArrayList<>();
        private final List<LaidOut.Finding> findings = new ArrayList<>();
        private @Nullable Placing entry;

        Flown(Arranger arranger, Show show, Airframe airframe, Act before, Act act) {
            this.arranger = arranger;
            this.show = show;
            this.airframe = airframe;
            this.act = act;
            old = new OldTransits(before);
            before.figures().forEach(f -> taken.add(f.id()));
            act.figures().forEach(f -> taken.add(f.id()));
        }

        Relaid laid() {
            act.variants().forEach(this::lay);
            List<Figure> figures = new ArrayList<>(done.values());
            act.figures().stream()
                    .filter(f -> !f.transit() && !done.containsKey(f.id()))
                    .forEach(figures::add);
            Act flown = act.flown(entry, figures, variants);
            return new Relaid(flown.withFigures(figures, remarks(act, old)), findings);
        }

        private void lay(Variant variant) {
            List<Figure> asked = new ArrayList<>();
            for (Figure figure : act.inOrder(variant)) {
                if (!figure.transit()) {
                    asked.add(done.getOrDefault(figure.id(), figure));
                }
            }
            List<String> ids = asked.stream().map(Figure::id).toList();
            Variant same = variants.stream()
                    .filter(other -> flies(other).equals(ids))
                    .findFirst()
                    .orElse(null);
            if (same != null) {
                variants.add(variant.inOrder(same.order()).from(same.entry()));
                return;
            }
            Arranged arranged = arranger.flown(
                    asked,
                    Set.copyOf(done.keySet()),
                    airframe,
                    show.venue().limits(),
                    Air.of(show.air(), show.venue()));
            boolean isFirst = variants.isEmpty();
            if (isFirst) {
                entry = arranged.entry();
            }
            variants.add(variant.inOrder(order(variant.name(), arranged.figures()))
                    .from(isFirst || Objects.equals(arranged.entry(), entry) ? null : arranged.entry()));
            for (LaidOut.Finding finding : arranged.findings()) {
                if (!findings.contains(finding)) {
                    findings.add(finding);
                }
            }
        }

        /** What a variant that was laid out flies between its transits. */
        private List<String> flies(Variant laid) {
            return laid.order().stream()
                    .filter(id -> {
                        Figure figure = done.get(id);
                        return figure != null && !figure.transit();
                    })
                    .toList();
        }

        private List<String> order(String variant, List<Figure> laid) {
            List<String> order = new ArrayList<>();
            for (int i = 0; i < laid.size(); i++) {
                Figure figure = laid.get(i);
                Figure kept = figure.transit() ? transit(variant, laid, i, order) : figure;
                done.putIfAbsent(kept.id(), kept);
                order.add(kept.id());
            }
            return order;
        }

        /** @param order what the variant flies before it */
        private Figure transit(String variant, List<Figure> laid, int at, List<String> order) {
            int next = at + 1;
            while (next < laid.size() && laid.get(next).transit()) {
                next++;
            }
            Figure figure = laid.get(at);
            Figure before = old.on(variant, next < laid.size() ? laid.get(next).id() : null, next - at - 1);
            if (before == null) {
                return done.values().stream()
                        .filter(other -> other.transit()
                                && Objects.equals(other.elements(), figure.elements())
                                && Objects.equals(other.title(), figure.title())
                                && !order.contains(other.id()))
                        .findFirst()
                        .orElseGet(() -> figure.withId(FreshId.of(figure.id(), taken)));
            }
            // A draft says what was seen on the way before; what a person wrote stays whatever is seen.
            boolean same = Objects.equals(figure.title(), before.title());
            List<Remark> said =
                    before.remarks().stream().filter(r -> same || !r.draft()).toList();
            return figure.withId(before.id()).withQuiets(before.quiets()).withRemarks(said);
        }
    }
}
