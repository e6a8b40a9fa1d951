package crowdline.show.check;

import crowdline.show.Announcement;
import crowdline.show.Show;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import java.util.List;
import java.util.function.Consumer;

/** Words for occasions that nobody can plan are agreed, and what is to be filled in can be told from what is said. */
final class AnnouncementRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        List<Announcement> all = show.announcements();
        for (int i = 0; i < all.size(); i++) {
            Announcement one = all.get(i);
            String path = "announcements[" + i + "]";
            String named = "the announcement " + Written.quoted(one.occasion());
            if (!one.isAgreed()) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "announcement-not-agreed",
                        named + " is not agreed with anyone; agree it with the organiser and write who and when into"
                                + " agreedWith",
                        path));
            }
            if (one.hasLooseBracket()) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "announcement-with-a-loose-bracket",
                        named + " has a square bracket that belongs to no other, or nothing between two; write what is"
                                + " to be filled in between [ and ]",
                        path + ".words"));
            }
        }
    }
}
