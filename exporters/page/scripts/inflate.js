
// --- inflate: RFC 1951, for browsers of any age ---

/// Codes of a Huffman alphabet by their lengths: how many there are of each, and the symbols in order.
function huffman(lengths) {
    const count = new Uint16Array(16), first = new Uint16Array(16), symbols = new Uint16Array(lengths.length);
    for (const length of lengths) ++count[length];
    count[0] = 0;
    for (let i = 1; i < 16; ++i) first[i] = first[i - 1] + count[i - 1];
    lengths.forEach((length, symbol) => { if (length) symbols[first[length]++] = symbol; });
    return {count, symbols};
}

const length_base = [3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258];
const length_bits = [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0];
const way_base = [1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097, 6145,
    8193, 12289, 16385, 24577];
const way_bits = [0, 0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 8, 8, 9, 9, 10, 10, 11, 11, 12, 12, 13, 13];
const order_of_lengths = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];

class Inflater {
    constructor(bytes) {
        this.bytes = bytes, this.at = 0, this.held = 0, this.bits_held = 0;
        this.out = new Uint8Array(bytes.length * 6 + 1024), this.size = 0;
    }

    bits(count) {
        while (this.bits_held < count) {
            if (this.at >= this.bytes.length) throw new Error("the page is not whole");
            this.held |= this.bytes[this.at++] << this.bits_held;
            this.bits_held += 8;
        }
        const value = this.held & ((1 << count) - 1);
        this.held >>>= count;
        this.bits_held -= count;
        return value;
    }

    symbol({count, symbols}) {
        let code = 0, first = 0, index = 0;
        for (let length = 1; length < 16; ++length) {
            code |= this.bits(1);
            if (code - count[length] < first) return symbols[index + code - first];
            index += count[length];
            first = (first + count[length]) << 1;
            code <<= 1;
        }
        throw new Error("the page is not whole");
    }

    room(more) {
        if (this.size + more <= this.out.length) return;
        const larger = new Uint8Array(Math.max(this.out.length * 2, this.size + more));
        larger.set(this.out.subarray(0, this.size));
        this.out = larger;
    }

    stored() {
        this.held = 0, this.bits_held = 0;
        const length = this.bytes[this.at] | this.bytes[this.at + 1] << 8;
        this.at += 4;
        this.room(length);
        this.out.set(this.bytes.subarray(this.at, this.at + length), this.size);
        this.at += length, this.size += length;
    }

    tables() {
        const literals = this.bits(5) + 257, ways = this.bits(5) + 1, known = this.bits(4) + 4;
        const of_lengths = new Uint8Array(19);
        for (let i = 0; i < known; ++i) of_lengths[order_of_lengths[i]] = this.bits(3);
        const coded = huffman(of_lengths), lengths = new Uint8Array(literals + ways);
        for (let i = 0; i < lengths.length;) {
            const symbol = this.symbol(coded);
            if (symbol < 16) { lengths[i++] = symbol; continue; }
            const value = symbol === 16 ? lengths[i - 1] : 0;
            const times = symbol === 16 ? 3 + this.bits(2) : symbol === 17 ? 3 + this.bits(3) : 11 + this.bits(7);
            lengths.fill(value, i, i + times);
            i += times;
        }
        return [huffman(lengths.subarray(0, literals)), huffman(lengths.subarray(literals))];
    }

    fixed() {
        const lengths = new Uint8Array(288).fill(8, 0, 144).fill(9, 144, 256).fill(7, 256, 280).fill(8, 280);
        return [huffman(lengths), huffman(new Uint8Array(30).fill(5))];
    }

    coded([literals, ways]) {
        for (;;) {
            const symbol = this.symbol(literals);
            if (symbol === 256) return;
            if (symbol < 256) {
                this.room(1);
                this.out[this.size++] = symbol;
                continue;
            }
            const length = length_base[symbol - 257] + this.bits(length_bits[symbol - 257]);
            const way = this.symbol(ways), back = way_base[way] + this.bits(way_bits[way]);
            this.room(length);
            for (let i = 0; i < length; ++i, ++this.size) this.out[this.size] = this.out[this.size - back];
        }
    }

    all() {
        for (let last = 0; !last;) {
            last = this.bits(1);
            const kind = this.bits(2);
            if (kind === 0) this.stored();
            else this.coded(kind === 1 ? this.fixed() : this.tables());
        }
        return this.out.subarray(0, this.size);
    }
}

/// What stands in the page under that name, large again.
function unpacked(id) {
    const text = atob(document.getElementById(id).textContent), bytes = new Uint8Array(text.length);
    for (let i = 0; i < text.length; ++i) bytes[i] = text.charCodeAt(i);
    return new Inflater(bytes).all();
}
