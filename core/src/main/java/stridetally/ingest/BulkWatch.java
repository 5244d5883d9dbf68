package stridetally.ingest;

/** Who is told how far the reading of long logs has come; by several threads at once. */
@FunctionalInterface
public interface BulkWatch {

    /** Nobody. */
    BulkWatch NONE = bytes -> {};

    /** So many bytes more were read, of text. */
    void read(long bytes);

    /** All was read. */
    default void done() {}
}
