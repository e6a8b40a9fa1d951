package crowdline.console.second;

import crowdline.storage.settings.SecondLook;

/** What the second window asks. */
public interface SecondHost {
    /** One that remembers nothing. */
    SecondHost NONE = new SecondHost() {
        @Override
        public SecondLook look() {
            return SecondLook.DEFAULT;
        }

        @Override
        public void keep(SecondLook look) {}
    };

    /** How it looked when it was last open. */
    SecondLook look();

    /** To look so the next time. */
    void keep(SecondLook look);
}
