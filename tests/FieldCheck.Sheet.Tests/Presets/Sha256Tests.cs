using System.Security.Cryptography;
using System.Text;
using CsCheck;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class Sha256Tests
{
    /// <summary>
    /// The examples of NIST for SHA-256 ("abc", the 448-bit message) and the empty message, from memory; the runtime's own is asked too.
    /// </summary>
    [Theory]
    [InlineData("", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")]
    [InlineData("abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData(
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1")]
    public void Examples_GiveTheirDigests(string text, string digest) =>
        Assert.Equal(digest, Sha256.Of(Encoding.ASCII.GetBytes(text)));

    [Fact]
    public void AnyBytes_GiveWhatTheRuntimeGives() => Gen.Byte.Array[0, 300].Sample(bytes =>
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), Sha256.Of(bytes)));
}
