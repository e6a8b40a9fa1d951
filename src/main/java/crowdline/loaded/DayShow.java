package crowdline.loaded;

import crowdline.live.state.Day;
import crowdline.live.state.Day.AddedAct;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.bounds.Most;
import crowdline.show.figure.Figure;
import crowdline.storage.show.KindsFile;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** A show as it is flown on the day: with the acts that nobody had planned. The show file knows nothing of them. */
public final class DayShow {
    private static final String PUT_IN = "put in on the day";

    private DayShow() {}

    /** The show with what was put in, each act behind the one it was put in after. */
    public static Show of(Show planned, List<AddedAct> added) {
        if (added.isEmpty()) {
            return planned;
        }
        List<Act> acts = new ArrayList<>(planned.acts());
        for (AddedAct act : added) {
            if (index(acts, act.id()) >= 0 || acts.size() >= Most.ACTS.entries()) {
                continue;
            }
            int after = index(acts, act.slotAfterId());
            LocalTime slot = after < 0
                    ? acts.isEmpty() ? LocalTime.NOON : acts.get(0).slotStart()
                    : acts.get(after)
                            .slotStart()
                            .plusSeconds(Math.round(acts.get(after).slotMinutes() * 60));
            acts.add(after + 1, act(act, slot));
        }
        List<Aircraft> aircraft = new ArrayList<>(planned.airframes());
        aircraft.add(new TimedAircraft(PUT_IN, PUT_IN, KindsFile.shipped().named("fly-past"), null));
        return planned.withAircraft(aircraft).withActs(acts, planned.remarks());
    }

    private static int index(List<Act> acts, String id) {
        for (int i = 0; i < acts.size(); i++) {
            if (acts.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    private static Act act(AddedAct put, LocalTime slot) {
        Figure whole = new Figure(
                put.id(), put.title(), null, null, null, put.minutes() * 60, null, null, List.of(), List.of());
        return new Act(
                put.id(),
                put.title(),
                PUT_IN,
                PUT_IN,
                slot,
                put.minutes(),
                null,
                List.of(whole),
                List.of(new Variant(PUT_IN, null, List.of(put.id()))),
                List.of());
    }

    /** An id for an act that is put in, unlike any other's. */
    public static String freshId(Day day) {
        int number = day.added().size() + 1;
        while (day.order().contains("put-in-" + number)) {
            number++;
        }
        return "put-in-" + number;
    }
}
