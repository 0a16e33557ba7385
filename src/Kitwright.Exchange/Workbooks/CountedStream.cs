namespace Kitwright.Exchange.Workbooks;

/// <summary>A part of a workbook as it unpacks, up to a limit of bytes.</summary>
/// <exception cref="PartTooBigException">More bytes come than the limit.</exception>
internal sealed class CountedStream(Stream inner, string part, long limit) : Stream
{
    private long taken;

    public override bool CanRead => true;
    public override bool CanSeek => false;
    public override bool CanWrite => false;
    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => taken;
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count)
    {
        var read = inner.Read(buffer, offset, count);
        taken += read;
        return taken <= limit ? read : throw new PartTooBigException(part);
    }

    public override void Flush() { }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            inner.Dispose();
        }

        base.Dispose(disposing);
    }
}
