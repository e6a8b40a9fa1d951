package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Remark;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Ids must be used once, as what refers to them could mean either. */
final class IdRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        Seen airframes = new Seen("airframe", "in the show", findings);
        for (int i = 0; i < show.airframes().size(); i++) {
            airframes.see(show.airframes().get(i).id(), "airframes[" + i + "].id");
        }
        Seen performers = new Seen("performer", "in the show", findings);
        for (int i = 0; i < show.performers().size(); i++) {
            performers.see(show.performers().get(i).id(), "performers[" + i + "].id");
        }
        Seen acts = new Seen("act", "in the show", findings);
        Seen remarks = new Seen("remark", "in the show", findings);
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            acts.see(act.id(), At.act(a) + ".id");
            Seen figures = new Seen("figure", "in its act", findings);
            for (int f = 0; f < act.figures().size(); f++) {
                figures.see(act.figures().get(f).id(), At.figure(a, f) + ".id");
                remarks.seeAll(act.figures().get(f).remarks(), At.figure(a, f) + ".remarks");
            }
            Seen variants = new Seen("variant", "in its act", findings);
            for (int v = 0; v < act.variants().size(); v++) {
                variants.see(act.variants().get(v).name(), At.variant(a, v) + ".name");
            }
            remarks.seeAll(act.remarks(), At.act(a) + ".remarks");
        }
        remarks.seeAll(show.remarks(), "remarks");
        Seen announcements = new Seen("announcement", "in the show", findings);
        for (int i = 0; i < show.announcements().size(); i++) {
            announcements.see(show.announcements().get(i).id(), "announcements[" + i + "].id");
        }
    }

    private static final class Seen {
        private final String what;
        private final String where;
        private final Consumer<Finding> findings;
        private final Map<String, String> pathOf = new HashMap<>();

        Seen(String what, String where, Consumer<Finding> findings) {
            this.what = what;
            this.where = where;
            this.findings = findings;
        }

        void see(String id, String path) {
            String first = pathOf.putIfAbsent(id, path);
            if (first != null) {
                findings.accept(new Finding(
                        Severity.ERROR,
                        "duplicate-id",
                        "the " + what + " " + Written.quoted(id) + " is already at " + first + "; each " + what
                                + " needs a name of its own " + where,
                        path));
            }
        }

        void seeAll(List<Remark> remarks, String path) {
            for (int r = 0; r < remarks.size(); r++) {
                see(remarks.get(r).id(), path + "[" + r + "].id");
            }
        }
    }
}
