using System.Buffers.Binary;
using System.Numerics;

namespace FieldCheck.Sheet.Presets;

/// <summary>The SHA-256 digest of a file, by FIPS 180-4, section 6.2.</summary>
/// <remarks>
/// Worked here because the runtime's own asks the system for its cryptography library, which a bare site machine may not have;
/// nothing secret hangs on it. Tests hold it against the standard's examples and against the runtime's.
/// </remarks>
public static class Sha256
{
    private const int Block = 64;
    private const int Words = 64;

    /// <summary>First 32 bits of the fractional parts of the cube roots of the first 64 primes (FIPS 180-4, 4.2.2).</summary>
    private static readonly uint[] Constants = [.. Primes().Take(Words).Select(prime => Fraction(prime, 3))];

    /// <summary>First 32 bits of the fractional parts of the square roots of the first 8 primes (FIPS 180-4, 5.3.3).</summary>
    private static readonly uint[] Start = [.. Primes().Take(8).Select(prime => Fraction(prime, 2))];

    /// <summary>The digest of some bytes, as 64 hexadecimal digits in small letters.</summary>
    /// <param name="bytes">The bytes.</param>
    public static string Of(ReadOnlySpan<byte> bytes)
    {
        byte[] padded = new byte[(bytes.Length + 8) / Block * Block + Block];
        bytes.CopyTo(padded);
        padded[bytes.Length] = 0x80;
        BinaryPrimitives.WriteUInt64BigEndian(padded.AsSpan(^8), 8 * (ulong)bytes.Length);
        uint[] state = [.. Start];
        for (int at = 0; at < padded.Length; at += Block)
        {
            Take(state, padded.AsSpan(at, Block));
        }

        return string.Concat(state.Select(word => word.ToString("x8", System.Globalization.CultureInfo.InvariantCulture)));
    }

    private static void Take(uint[] state, ReadOnlySpan<byte> block)
    {
        Span<uint> w = stackalloc uint[Words];
        for (int t = 0; t < Words; t++)
        {
            w[t] = t < 16
                ? BinaryPrimitives.ReadUInt32BigEndian(block[(4 * t)..])
                : Sigma(w[t - 2], 17, 19, 10) + w[t - 7] + Sigma(w[t - 15], 7, 18, 3) + w[t - 16];
        }

        (uint a, uint b, uint c, uint d) = (state[0], state[1], state[2], state[3]);
        (uint e, uint f, uint g, uint h) = (state[4], state[5], state[6], state[7]);
        for (int t = 0; t < Words; t++)
        {
            uint first = h + Sum(e, 6, 11, 25) + ((e & f) ^ (~e & g)) + Constants[t] + w[t];
            uint second = Sum(a, 2, 13, 22) + ((a & b) ^ (a & c) ^ (b & c));
            (h, g, f, e, d, c, b, a) = (g, f, e, d + first, c, b, a, first + second);
        }

        uint[] worked = [a, b, c, d, e, f, g, h];
        for (int i = 0; i < state.Length; i++)
        {
            state[i] += worked[i];
        }
    }

    private static uint Sigma(uint word, int first, int second, int shift) =>
        BitOperations.RotateRight(word, first) ^ BitOperations.RotateRight(word, second) ^ (word >> shift);

    private static uint Sum(uint word, int first, int second, int third) =>
        BitOperations.RotateRight(word, first) ^ BitOperations.RotateRight(word, second) ^ BitOperations.RotateRight(word, third);

    private static IEnumerable<int> Primes() => Enumerable.Range(2, int.MaxValue - 2)
        .Where(number => Enumerable.Range(2, number - 2).TakeWhile(factor => factor * factor <= number).All(factor => number % factor != 0));

    /// <summary>The greatest whole number whose power is no more than the prime times 2^(32·power), without what is above 32 bits.</summary>
    private static uint Fraction(int prime, int power)
    {
        BigInteger wanted = (BigInteger)prime << (32 * power);
        BigInteger root = 0;
        for (int bit = 36; bit >= 0; bit--)
        {
            BigInteger tried = root + (BigInteger.One << bit);
            root = BigInteger.Pow(tried, power) <= wanted ? tried : root;
        }

        return (uint)(root & uint.MaxValue);
    }
}
