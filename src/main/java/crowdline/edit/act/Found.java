package crowdline.edit.act;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.bounds.Written;
import crowdline.show.figure.Figure;

/** What an edit is about, found in the show as it is by then. */
final class Found {
    private static final int LONGEST = 40;

    private Found() {}

    static Act act(Show show, String actId) throws CannotBe {
        return show.act(actId).orElseThrow(() -> new CannotBe("That act is no longer in the show; choose another"));
    }

    static Variant variant(Act act, String name) throws CannotBe {
        return act.variant(name)
                .orElseThrow(
                        () -> new CannotBe("The act has no variant " + quoted(name) + " any more; choose another"));
    }

    static Figure figure(Act act, String figureId) throws CannotBe {
        return act.figure(figureId)
                .orElseThrow(() -> new CannotBe("That figure is no longer in the act; choose another"));
    }

    /** A name in quotes, shortened if long: the name of a change is read at a glance. */
    static String quoted(String name) {
        return "“" + brief(name) + "”";
    }

    static String brief(String name) {
        return Written.brief(name.strip().replaceAll("\\s+", " "), LONGEST);
    }
}
