package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.bounds.Nearest;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Acts name a performer and an airframe of the show, and each of these is there for an act. */
final class ReferenceRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        List<String> performers = show.performers().stream().map(Performer::id).toList();
        List<String> airframes = show.airframes().stream().map(Aircraft::id).toList();
        if (show.acts().isEmpty()) {
            findings.accept(new Finding(
                    Severity.WARNING, "no-acts", "the show has no act; there is nothing to talk about yet", "acts"));
        }
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            known("performer", act.performer(), performers, At.act(a) + ".performer", findings);
            known("airframe", act.airframe(), airframes, At.act(a) + ".airframe", findings);
        }
        unused("performer", "performers", performers, show.acts().stream().map(Act::performer), findings);
        unused("airframe", "airframes", airframes, show.acts().stream().map(Act::airframe), findings);
    }

    private static void known(String what, String id, List<String> ids, String path, Consumer<Finding> findings) {
        if (ids.contains(id)) {
            return;
        }
        String near = Nearest.hint(id, ids);
        String remedy = near.isEmpty() ? "; add it to " + what + "s or name one that is there" : near;
        findings.accept(new Finding(
                Severity.ERROR,
                "unknown-" + what,
                "the " + what + " " + Written.quoted(id) + " is not among the show's " + what + "s" + remedy,
                path));
    }

    private static void unused(
            String what, String list, List<String> ids, Stream<String> used, Consumer<Finding> findings) {
        var inUse = used.collect(Collectors.toSet());
        for (int i = 0; i < ids.size(); i++) {
            if (!inUse.contains(ids.get(i))) {
                findings.accept(new Finding(
                        Severity.NOTE,
                        "unused-" + what,
                        "no act uses the " + what + " " + Written.quoted(ids.get(i)),
                        list + "[" + i + "]"));
            }
        }
    }
}
