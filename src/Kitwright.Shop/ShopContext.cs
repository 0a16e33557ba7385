using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Shop.Rows;
using Kitwright.Words;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Kitwright.Shop;

/// <summary>The tables of a shop. Rows are reached through <see cref="ShopStore"/>; pages may query them to read.</summary>
public sealed class ShopContext(DbContextOptions<ShopContext> options) : DbContext(options)
{
    private const int KeyLength = 100;
    private const int NameLength = 200;

    public DbSet<ProjectRow> Projects => Set<ProjectRow>();
    public DbSet<RevisionRow> Revisions => Set<RevisionRow>();
    public DbSet<FabricRow> Fabrics => Set<FabricRow>();
    public DbSet<BoltRow> Bolts => Set<BoltRow>();
    public DbSet<BalanceRow> Balances => Set<BalanceRow>();
    public DbSet<BookingRow> Bookings => Set<BookingRow>();
    public DbSet<EntryRow> Entries => Set<EntryRow>();
    public DbSet<OffcutBalanceRow> OffcutBalances => Set<OffcutBalanceRow>();
    public DbSet<OffcutEntryRow> OffcutEntries => Set<OffcutEntryRow>();
    public DbSet<TermsRow> Terms => Set<TermsRow>();
    public DbSet<ColumnNameRow> ColumnNames => Set<ColumnNameRow>();
    public DbSet<DemoRow> Demo => Set<DemoRow>();

    // Whole numbers sort and compare alike in every database; enums are stored by name.
    protected override void ConfigureConventions(ModelConfigurationBuilder conventions)
    {
        conventions.Properties<DateTimeOffset>().HaveConversion<UtcTicks>();
        conventions.Properties<Enum>().HaveConversion<string>().HaveMaxLength(KeyLength);
    }

    protected override void OnModelCreating(ModelBuilder model)
    {
        model.Entity<ProjectRow>(MapProjects);
        model.Entity<RevisionRow>(MapRevisions);
        model.Entity<FabricRow>(MapFabrics);
        model.Entity<BoltRow>(MapBolts);
        model.Entity<BalanceRow>(MapBalances);
        model.Entity<BookingRow>(MapBookings);
        model.Entity<EntryRow>(MapEntries);
        model.Entity<OffcutBalanceRow>(MapOffcutBalances);
        model.Entity<OffcutEntryRow>(MapOffcutEntries);
        model.Entity<TermsRow>().ToTable(nameof(Terms));
        model.Entity<TermsRow>().Property(t => t.Id).ValueGeneratedNever();
        model.Entity<TermsRow>().Property(t => t.SoldBy).HasDefaultValue(LengthUnit.Yard);
        model.Entity<TermsRow>().Property(t => t.Words).HasDefaultValue(TradeWords.American);
        model.Entity<TermsRow>().Property(t => t.Goal).HasDefaultValue(CutGoal.ByTheStep);
        model.Entity<TermsRow>().Property(t => t.Aims).HasDefaultValue("Purchase Settings Cuts Surplus Leftover");
        model.Entity<TermsRow>().Property(t => t.Layers).HasDefaultValue(1);
        model.Entity<TermsRow>().Property(t => t.SquaringLossTicks).HasDefaultValue(4064L);
        model.Entity<TermsRow>().Property(t => t.LeastLeftoverTicks).HasDefaultValue(20_320L);
        model.Entity<ColumnNameRow>(MapColumnNames);
        model.Entity<DemoRow>().ToTable(nameof(Demo)).HasData(new DemoRow { State = Kitwright.Shop.Demo.DemoState.Absent });
    }

    private static void MapProjects(EntityTypeBuilder<ProjectRow> project)
    {
        project.ToTable(nameof(Projects)).HasKey(p => p.Id);
        project.Property(p => p.Slug).HasMaxLength(KeyLength);
        project.Property(p => p.Name).HasMaxLength(NameLength);
        project.HasIndex(p => p.Slug).IsUnique();
        project.Property(p => p.Version).IsConcurrencyToken();
    }

    private static void MapRevisions(EntityTypeBuilder<RevisionRow> revision)
    {
        revision.ToTable(nameof(Revisions)).HasKey(r => r.Id);
        revision.Property(r => r.By).HasMaxLength(NameLength);
        revision.HasIndex(r => new { r.Project, r.Number }).IsUnique();
        revision.HasOne<ProjectRow>().WithMany().HasForeignKey(r => r.Project).OnDelete(DeleteBehavior.Restrict);
        revision.HasOne<RevisionRow>().WithMany().HasForeignKey(r => r.Base).OnDelete(DeleteBehavior.Restrict);
    }

    private static void MapFabrics(EntityTypeBuilder<FabricRow> fabric)
    {
        fabric.ToTable(nameof(Fabrics)).HasKey(f => f.Number);
        fabric.Property(f => f.Number).HasMaxLength(KeyLength);
        fabric.Property(f => f.Name).HasMaxLength(NameLength);
        fabric.Property(f => f.Color).HasMaxLength(7);
        fabric.Property(f => f.Second).HasMaxLength(7);
        fabric.Property(f => f.Direction).HasDefaultValue(PrintDirection.Any);
    }

    private static void MapBolts(EntityTypeBuilder<BoltRow> bolt)
    {
        bolt.ToTable(nameof(Bolts)).HasKey(b => b.Id);
        bolt.Property(b => b.Id).HasMaxLength(KeyLength);
        bolt.Property(b => b.Fabric).HasMaxLength(KeyLength);
        bolt.Property(b => b.Lot).HasMaxLength(KeyLength);
        bolt.HasOne<FabricRow>().WithMany().HasForeignKey(b => b.Fabric).OnDelete(DeleteBehavior.Restrict);
    }

    private static void MapBalances(EntityTypeBuilder<BalanceRow> balance)
    {
        balance.ToTable(nameof(Balances), table => table.HasCheckConstraint("CK_Balances_OnHand", "\"OnHandTicks\" >= 0")).HasKey(b => b.Bolt);
        balance.Property(b => b.Bolt).HasMaxLength(KeyLength);
        balance.Property(b => b.Entries).IsConcurrencyToken();
        balance.HasOne<BoltRow>().WithOne().HasForeignKey<BalanceRow>(b => b.Bolt).OnDelete(DeleteBehavior.Restrict);
    }

    private static void MapBookings(EntityTypeBuilder<BookingRow> booking)
    {
        booking.ToTable(nameof(Bookings)).HasKey(b => b.Id);
        booking.Property(b => b.Asked).HasMaxLength(64);
        booking.Property(b => b.By).HasMaxLength(NameLength);
    }

    private static void MapEntries(EntityTypeBuilder<EntryRow> entry)
    {
        entry.ToTable(nameof(Entries)).HasKey(e => e.Id);
        entry.Property(e => e.Bolt).HasMaxLength(KeyLength);
        entry.Property(e => e.For).HasMaxLength(NameLength);
        entry.HasIndex(e => new { e.Bolt, e.Id });
        entry.HasOne<BookingRow>().WithMany().HasForeignKey(e => e.Booking).OnDelete(DeleteBehavior.Restrict);
        entry.HasOne<BoltRow>().WithMany().HasForeignKey(e => e.Bolt).OnDelete(DeleteBehavior.Restrict);
    }

    private static void MapOffcutBalances(EntityTypeBuilder<OffcutBalanceRow> balance)
    {
        balance
            .ToTable(nameof(OffcutBalances), table => table.HasCheckConstraint("CK_OffcutBalances_OnHand", "\"OnHand\" >= 0"))
            .HasKey(b => new { b.Fabric, b.WidthTicks, b.HeightTicks });
        balance.Property(b => b.Fabric).HasMaxLength(KeyLength);
        balance.Property(b => b.Entries).IsConcurrencyToken();
        balance.HasOne<FabricRow>().WithMany().HasForeignKey(b => b.Fabric).OnDelete(DeleteBehavior.Restrict);
    }

    private static void MapOffcutEntries(EntityTypeBuilder<OffcutEntryRow> entry)
    {
        entry.ToTable(nameof(OffcutEntries)).HasKey(e => e.Id);
        entry.Property(e => e.Fabric).HasMaxLength(KeyLength);
        entry.Property(e => e.For).HasMaxLength(NameLength);
        entry.HasIndex(e => new { e.Fabric, e.WidthTicks, e.HeightTicks, e.Id });
        entry.HasIndex(e => e.For);
        entry.HasOne<BookingRow>().WithMany().HasForeignKey(e => e.Booking).OnDelete(DeleteBehavior.Restrict);
        entry
            .HasOne<OffcutBalanceRow>()
            .WithMany()
            .HasForeignKey(e => new { e.Fabric, e.WidthTicks, e.HeightTicks })
            .OnDelete(DeleteBehavior.Restrict);
    }

    private static void MapColumnNames(EntityTypeBuilder<ColumnNameRow> column)
    {
        column.ToTable(nameof(ColumnNames)).HasKey(c => c.Column);
        column.Property(c => c.Name).HasMaxLength(NameLength);
    }

    internal sealed class UtcTicks()
        : ValueConverter<DateTimeOffset, long>(time => time.UtcTicks, ticks => new(ticks, TimeSpan.Zero));
}
