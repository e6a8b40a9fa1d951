package crowdline.edit.day;

import crowdline.draft.RenamedWords;
import crowdline.edit.Change;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.act.LaidOutActs;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.AirframeMaker;
import crowdline.show.aircraft.Engine;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.aircraft.Typical;
import crowdline.show.catalogue.Catalogue;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Edits of what flies. A number that was typed is told; one that was cleared is the kind's. The acts it flies are laid out anew. */
public final class Aircrafts {
    private final LaidOutActs acts;

    public Aircrafts(Catalogue shipped) {
        acts = new LaidOutActs(shipped);
    }

    /** Calls it otherwise to the crowd, in first drafts too. */
    public static Edit rename(String id, String name) {
        return ((Edit) show -> {
                    Aircraft before = find(show, id);
                    Aircraft after = before instanceof Airframe a
                            ? a.named(name.strip())
                            : new TimedAircraft(
                                    id,
                                    name.strip(),
                                    ((TimedAircraft) before).kind(),
                                    ((TimedAircraft) before).number());
                    return new Change(
                            "Rename the aircraft", RenamedWords.of(show, with(show, after)), "name of aircraft " + id);
                })
                .refusing();
    }

    /** Makes it another kind, with all that is typical of that; nothing that was told of the old kind stays. */
    public Edit kind(String id, Kind kind) {
        return edit(id, "Kind of aircraft", before -> {
            if (!kind.flies()) {
                return new TimedAircraft(id, before.name(), kind, null);
            }
            return kind.airframe(id, before.name(), Sliders.TYPICAL);
        });
    }

    /** Tells how many they are; null if that is not known. */
    public Edit number(String id, @Nullable Integer number) {
        return edit(id, "How many they are", before -> {
            if (!(before instanceof TimedAircraft timed)) {
                throw new CannotBe("Only what is timed, such as a formation, can be several");
            }
            return new TimedAircraft(id, timed.name(), timed.kind(), number);
        });
    }

    /** Moves it from what is typical of its kind; what was told stays. */
    public Edit sliders(String id, Sliders sliders) {
        return edit(id, "Sliders of the aircraft", "sliders of " + id, before -> {
            Typical typical = typical(before);
            return AirframeMaker.make(id, before.name(), typical.kind(), sliders, told((Airframe) before, null, null));
        });
    }

    /** Tells a number by its key in the show file; null for what is typical of its kind. */
    public Edit number(String id, String key, @Nullable Double told) {
        return edit(id, (told == null ? "Clear a number" : "Tell a number") + " of the aircraft", before -> {
            if (!(before instanceof Airframe airframe)) {
                throw new CannotBe(before.name() + " is only timed, so it has no numbers");
            }
            Typical typical = airframe.typical();
            return AirframeMaker.make(
                    id,
                    before.name(),
                    typical == null ? null : typical.kind(),
                    typical == null ? Sliders.TYPICAL : typical.sliders(),
                    told(airframe, key, told));
        });
    }

    private static Typical typical(Aircraft aircraft) throws CannotBe {
        Typical typical = aircraft instanceof Airframe a ? a.typical() : null;
        if (typical == null) {
            throw new CannotBe(aircraft.name() + " is of no kind, so there is nothing typical to move it from");
        }
        return typical;
    }

    /** What was told of an airframe, with one number more, less or otherwise. */
    private static AirframeMaker.Told told(Airframe airframe, @Nullable String key, @Nullable Double number) {
        Map<String, Double> numbers = new HashMap<>(AirframeNumbers.of(airframe));
        numbers.keySet().removeAll(airframe.assumed());
        if (key != null) {
            if (number == null) {
                numbers.remove(key);
            } else {
                numbers.put(key, number);
            }
        }
        Engine engine = airframe.engine();
        boolean propeller = engine instanceof Engine.Propeller;
        return new AirframeMaker.Told(
                numbers,
                airframe.typical() == null && airframe.glider(),
                propeller ? ((Engine.Propeller) engine).turns() : null,
                propeller && !airframe.assumed().contains("propellerType") ? ((Engine.Propeller) engine).type() : null);
    }

    private interface Changing {
        Aircraft of(Aircraft before) throws CannotBe;
    }

    private Edit edit(String id, String name, Changing changing) {
        return edit(id, name, "", changing);
    }

    private Edit edit(String id, String name, String about, Changing changing) {
        return ((Edit) show -> {
                    Aircraft after = changing.of(find(show, id));
                    return new Change(
                            name,
                            acts.again(with(show, after), act -> act.airframe().equals(id)),
                            about);
                })
                .refusing();
    }

    private static Show with(Show show, Aircraft after) {
        List<Aircraft> all = show.airframes().stream()
                .map(a -> a.id().equals(after.id()) ? after : a)
                .toList();
        return show.withAircraft(all);
    }

    private static Aircraft find(Show show, String id) throws CannotBe {
        return show.aircraft(id).orElseThrow(() -> new CannotBe("That aircraft is no longer in the show"));
    }
}
