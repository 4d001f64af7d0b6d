package beltmark.recordbook;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;

/**
 * Everything a record says, and the bytes that are hashed. The bytes are the ten fields in the order of the components,
 * each preceded by its length in bytes as four bytes, most significant first. Whole numbers are decimal ASCII digits
 * with a minus sign where needed, times are milliseconds since 1970-01-01T00:00Z written so, texts are UTF-8, the
 * previous hash is its 32 bytes. The hash of the record is SHA-256 of one zero byte and these bytes.
 *
 * @param format of these bytes: {@link #FORMAT}
 * @param sequence the number of the record, from 1 without gaps
 * @param kind what it is
 * @param operation the id of the form or request it came by
 * @param subject the person it is about
 * @param actor the person who did it
 * @param happenedAt when it is said to have happened
 * @param recordedAt when it was stored; never before that of the record before it
 * @param body JSON, exactly as stored
 * @param previousHash the hash of the record before it, or {@link Hash#NONE}
 */
record Envelope(
        int format,
        long sequence,
        String kind,
        String operation,
        long subject,
        long actor,
        Instant happenedAt,
        Instant recordedAt,
        String body,
        Hash previousHash) {

    static final int FORMAT = 1;

    Hash hash() {
        return Hash.ofLeaf(bytes());
    }

    byte[] bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(256 + body.length());
        add(bytes, Integer.toString(format));
        add(bytes, Long.toString(sequence));
        add(bytes, kind);
        add(bytes, operation);
        add(bytes, Long.toString(subject));
        add(bytes, Long.toString(actor));
        add(bytes, Long.toString(happenedAt.toEpochMilli()));
        add(bytes, Long.toString(recordedAt.toEpochMilli()));
        add(bytes, body);
        add(bytes, previousHash.bytes());
        return bytes.toByteArray();
    }

    private static void add(ByteArrayOutputStream bytes, String field) {
        add(bytes, field.getBytes(StandardCharsets.UTF_8));
    }

    private static void add(ByteArrayOutputStream bytes, byte[] field) {
        bytes.writeBytes(ByteBuffer.allocate(Integer.BYTES).putInt(field.length).array());
        bytes.writeBytes(field);
    }
}
