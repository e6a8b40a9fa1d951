package crowdline.patter;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is to be placed, without fillers.
 *
 * @param bound remarks of figures, in the order in which they may be said
 * @param floating remarks that may be said anywhere, the most valuable first
 * @param breath ticks between two remarks
 */
record Workload(Horizon horizon, List<Item> bound, List<Item> floating, int breath) {

    static Workload of(PlanRequest request, Horizon horizon) {
        Builder builder = new Builder(request, horizon);
        List<Item> bound = new ArrayList<>();
        for (Slot slot : request.slots()) {
            if (isPassed(request, slot)) {
                continue;
            }
            for (Candidate candidate : inOrder(request, slot)) {
                List<Choice> choices = builder.choices(candidate, slot);
                if (!choices.isEmpty()) {
                    bound.add(Item.of(candidate, bound.size(), -1, choices));
                }
            }
        }
        List<Item> floating = new ArrayList<>();
        for (Candidate candidate : request.candidates()) {
            if (candidate.figureId() == null && builder.isWanted(candidate)) {
                List<Choice> choices = builder.choices(candidate, null);
                if (!choices.isEmpty()) {
                    floating.add(Item.of(candidate, -1, 0, choices));
                }
            }
        }
        floating.sort(Comparator.comparingLong(Item::greatestValue)
                .reversed()
                .thenComparingInt(item -> item.choices().get(0).length())
                .thenComparing(Item::id));
        List<Item> numbered = new ArrayList<>();
        for (Item item : floating) {
            numbered.add(Item.of(item.candidate(), -1, numbered.size(), item.choices()));
        }
        return new Workload(
                horizon,
                List.copyOf(bound),
                List.copyOf(numbered),
                Tick.up(request.rules().breathS()));
    }

    /**
     * A figure's remarks in the order they may be said: as written, but what is written after the call and what may only
     * be said once the figure has begun comes after the call, and those tied to moments change places to come in the order
     * of their moments.
     */
    private static List<Candidate> inOrder(PlanRequest request, Slot slot) {
        List<Candidate> before = new ArrayList<>();
        List<Candidate> calls = new ArrayList<>();
        List<Candidate> after = new ArrayList<>();
        for (Candidate candidate : request.candidates()) {
            if (!slot.figureId().equals(candidate.figureId()) || !isWanted(request, candidate)) {
                continue;
            }
            Double earliestS = own(request, candidate, slot).earliestS();
            if (candidate.remark().kind() == RemarkKind.CALL) {
                calls.add(candidate);
            } else if (earliestS != null && earliestS < 0 && calls.isEmpty()) {
                before.add(candidate);
            } else {
                after.add(candidate);
            }
        }
        before.addAll(calls);
        before.addAll(after);
        return byMoment(request, slot, before);
    }

    private static List<Candidate> byMoment(PlanRequest request, Slot slot, List<Candidate> written) {
        Iterator<Candidate> tied = written.stream()
                .filter(c -> momentS(request, c, slot) != null)
                .sorted(Comparator.comparingDouble(c -> Objects.requireNonNull(momentS(request, c, slot))))
                .iterator();
        return written.stream()
                .map(c -> momentS(request, c, slot) == null ? c : tied.next())
                .toList();
    }

    private static @Nullable Double momentS(PlanRequest request, Candidate candidate, Slot slot) {
        return own(request, candidate, slot).momentS();
    }

    private static OwnTimes own(PlanRequest request, Candidate candidate, Slot slot) {
        return OwnTimes.of(candidate.remark(), slot.moments(), request.rules());
    }

    /** True if a later figure that is near has already been spoken of: then nothing more is said of this one. */
    static boolean isPassed(PlanRequest request, Slot slot) {
        double nearS = request.nowS() + request.rules().callStartsAtMostBeforeS();
        Set<String> laterNear = new HashSet<>();
        boolean later = false;
        for (Slot other : request.slots()) {
            if (later && other.startS() <= nearS) {
                laterNear.add(other.figureId());
            }
            later |= other.equals(slot);
        }
        Speaking speaking = request.speaking();
        return request.candidates().stream()
                .filter(c -> c.figureId() != null
                        && laterNear.contains(c.figureId())
                        && c.remark().kind() != RemarkKind.FILLER)
                .map(c -> c.remark().id())
                .anyMatch(id -> request.alreadySaid().contains(id)
                        || (speaking != null && speaking.remarkId().equals(id)));
    }

    private static boolean isWanted(PlanRequest request, Candidate candidate) {
        Speaking speaking = request.speaking();
        String id = candidate.remark().id();
        return candidate.remark().kind() != RemarkKind.FILLER
                && !request.alreadySaid().contains(id)
                && (speaking == null || !speaking.remarkId().equals(id));
    }

    /** The greatest total any plan could have if time were no matter. */
    long greatestValue() {
        long sum = 0;
        for (Item item : bound) {
            sum += item.greatestValue();
        }
        for (Item item : floating) {
            sum += item.greatestValue();
        }
        return sum;
    }

    Map<String, Item> byId() {
        Map<String, Item> byId = new HashMap<>();
        bound.forEach(item -> byId.put(item.id(), item));
        floating.forEach(item -> byId.put(item.id(), item));
        return byId;
    }

    /** Turns candidates into choices. */
    private static final class Builder {
        private final PlanRequest request;
        private final Horizon horizon;
        private final Map<String, Placed> before = new HashMap<>();
        private final int lag;

        Builder(PlanRequest request, Horizon horizon) {
            this.request = request;
            this.horizon = horizon;
            Set<String> wanted = new HashSet<>();
            request.candidates().stream()
                    .filter(this::isWanted)
                    .forEach(c -> wanted.add(c.remark().id()));
            int firstBefore = Tick.NEVER;
            for (Placed placed : request.previous().map(Plan::placed).orElse(List.of())) {
                if (wanted.contains(placed.remarkId()) && !isOfAnActThatIsOver(placed)) {
                    before.put(placed.remarkId(), placed);
                    firstBefore = Math.min(firstBefore, Tick.at(placed.startS()));
                }
            }
            lag = Math.max(0, horizon.freeFrom() - firstBefore);
        }

        /** Its figure was to come and does not: where it had its place says nothing of when it is said now. */
        private boolean isOfAnActThatIsOver(Placed placed) {
            return request.slots().isEmpty() && placed.figureId() != null;
        }

        boolean isWanted(Candidate candidate) {
            return Workload.isWanted(request, candidate);
        }

        List<Choice> choices(Candidate candidate, @Nullable Slot slot) {
            List<Choice> choices = new ArrayList<>();
            for (RemarkForm form : RemarkForm.values()) {
                SpokenLength length = candidate.length(form);
                if (length != null) {
                    choice(candidate, slot, form, Tick.up(length.seconds())).ifPresent(choices::add);
                }
            }
            return List.copyOf(choices);
        }

        private Optional<Choice> choice(Candidate candidate, @Nullable Slot slot, RemarkForm form, int length) {
            RemarkKind kind = candidate.remark().kind();
            Window window = slot == null
                    ? Window.floating(kind, length, horizon, request.rules())
                    : Window.of(candidate.remark(), length, slot, request.rules());
            List<Starts.Stretch> closed = horizon.closedTo(candidate.remark());
            Starts starts = window.forNewcomer(length, horizon, closed);
            Placed placed = before.get(candidate.remark().id());
            boolean kept = placed != null && placed.form() == form;
            int wished = window.wished();
            if (kept && placed != null) {
                wished = Tick.at(placed.startS());
                starts = keepingPlace(starts, window.all(length, horizon, closed), wished);
            }
            if (starts.isEmpty()) {
                return Optional.empty();
            }
            long value = Worth.of(kind, candidate.remark().weight(), form, kept);
            return Optional.of(new Choice(form, length, value, starts, wished, kept));
        }

        /** What is on the plan may stay where it is, or move as far as the whole plan lags, or else as little as it must. */
        private Starts keepingPlace(Starts starts, Starts all, int place) {
            Starts kept = starts;
            if (all.holds(place)) {
                kept = kept.and(place);
            } else if (all.earliest(place) != Tick.NEVER) {
                kept = kept.and(all.earliest(place));
            } else if (!all.isEmpty()) {
                kept = kept.and(all.last());
            }
            return all.holds(place + lag) ? kept.and(place + lag) : kept;
        }
    }
}
